// SPDX-License-Identifier: GPL-3.0-or-later
// A person answers for a machine's key, for one job and no other.
#include "core/journal/vouch.h"

#include "core/base/digest.h"

#include <QTemporaryDir>
#include <QTest>

using namespace proofwalk;
using namespace proofwalk::journal;

class VouchTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void goodVouchingNamesThePerson();
    void changedInAnything();
    void certificateOfAnotherRoot();
    void afterTheCertificateHasEnded();

private:
    Identity made(const char* folder, const char* name);

    QTemporaryDir m_folder;
    Identity m_identity;
    Vouching m_vouching;
    const std::string m_job = std::string(32, '1');
    const std::string m_key = "3059";
    const std::int64_t m_now = base::now().utc_ms;
};

Identity VouchTest::made(const char* folder, const char* name)
{
    const std::filesystem::path path = m_folder.filePath(QLatin1String(folder)).toStdString();
    if (!createIdentity(path, {name, "The installing firm"}, "correct horse")) qFatal("no identity");
    auto identity = openIdentity(path, "correct horse");
    if (!identity) qFatal("identity does not open");
    return *identity;
}

void VouchTest::initTestCase()
{
    m_identity = made("signer", "Commissioning engineer");
    auto vouching = vouchFor(m_job, m_key, m_identity);
    QVERIFY(vouching);
    m_vouching = *vouching;
}

void VouchTest::goodVouchingNamesThePerson()
{
    const auto name = checkVouching(m_job, m_vouching, m_now);
    QVERIFY(name);
    QCOMPARE(*name, std::string("Commissioning engineer"));
}

void VouchTest::changedInAnything()
{
    QVERIFY(!checkVouching(std::string(32, '2'), m_vouching, m_now)); // of another job
    for (std::string Vouching::* member :
         {&Vouching::machineKey, &Vouching::certificate, &Vouching::root, &Vouching::signature}) {
        Vouching changed = m_vouching;
        char& digit = (changed.*member)[(changed.*member).size() / 2];
        digit = digit == '0' ? '1' : '0';
        QVERIFY(!checkVouching(m_job, changed, m_now));
        changed.*member = "";
        QVERIFY(!checkVouching(m_job, changed, m_now));
    }
}

void VouchTest::certificateOfAnotherRoot()
{
    Vouching mixed = m_vouching;
    mixed.root = base::toHex(made("other", "Somebody else").rootDer);
    QVERIFY(!checkVouching(m_job, mixed, m_now));
}

void VouchTest::afterTheCertificateHasEnded()
{
    constexpr std::int64_t century_ms = 100LL * 365 * 24 * 3600 * 1000;
    QVERIFY(!checkVouching(m_job, m_vouching, m_now + century_ms));
}

QTEST_GUILESS_MAIN(VouchTest)
#include "vouch.moc"
