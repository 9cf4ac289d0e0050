// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/installerkey.h"

#include "core/journal/home.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <memory>

namespace proofwalk::models {
namespace {

using Facts = Result<journal::IdentityFacts>;

Facts describe()
{
    auto folder = identityFolder();
    if (!folder) return passOn(folder);
    return journal::describeIdentity(*folder);
}

Facts create(const journal::Person& person, const std::string& passphrase)
{
    auto folder = identityFolder();
    if (!folder) return passOn(folder);
    std::error_code none;
    std::filesystem::create_directories(folder->parent_path(), none); // what is wrong with it createIdentity says
    return journal::createIdentity(*folder, person, passphrase);
}

QString grouped(const std::string& digits, std::size_t groups)
{
    QString all;
    for (std::size_t i = 0; i < groups && i * 4 < digits.size(); ++i)
        all += (i == 0 ? QString() : QStringLiteral(" ")) + text(digits.substr(i * 4, 4));
    return all;
}

} // namespace

Result<std::filesystem::path> identityFolder()
{
    auto home = journal::homeFolder();
    if (!home) return passOn(home);
    return *home / "identity";
}

InstallerKey::InstallerKey(QObject* parent) : QObject(parent), m_asking(this, [this] { Q_EMIT changed(); }) { look(); }

QString InstallerKey::name() const { return m_facts ? text(m_facts->name) : QString(); }

QString InstallerKey::firm() const { return m_facts ? text(m_facts->firm) : QString(); }

QString InstallerKey::fingerprint() const { return m_facts ? grouped(m_facts->rootFingerprint, 3) : QString(); }

QString InstallerKey::fullFingerprint() const { return m_facts ? grouped(m_facts->rootFingerprint, 16) : QString(); }

void InstallerKey::look()
{
    auto found = std::make_shared<std::optional<Facts>>();
    Desk::instance().aside([found] { *found = describe(); }, this,
                           [this, found] {
                               m_known = true;
                               if (*found && (*found)->has_value()) m_facts = ***found;
                               Q_EMIT changed();
                           });
}

void InstallerKey::make(const QString& name, const QString& firm, const QString& passphrase, const QString& again)
{
    if (m_asking.busy()) return;
    if (passphrase != again) {
        m_asking.end(parts::phrase("window.key.differ"));
        return;
    }
    m_asking.begin();
    auto made = std::make_shared<std::optional<Facts>>();
    Desk::instance().aside([made, person = journal::Person{name.trimmed().toStdString(), firm.trimmed().toStdString()},
                            secret = passphrase.toStdString()] { *made = create(person, secret); },
                           this,
                           [this, made] {
                               if (!(*made)->has_value()) return m_asking.end(sentence((*made)->error()));
                               m_facts = ***made;
                               m_asking.end();
                               Q_EMIT this->made();
                           });
}

} // namespace proofwalk::models
