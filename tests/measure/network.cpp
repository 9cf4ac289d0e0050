// SPDX-License-Identifier: GPL-3.0-or-later
// Networks against Kirchhoff's laws solved as a system of linear equations, which knows no series and no parallel; and
// against Ohm's law worked by hand.
#include "core/measure/network.h"

#include "core/measure/loop.h"

#include <QtTest>

#include <cmath>
#include <random>

using namespace proofwalk;
using measure::Network;
using measure::Part;
using measure::PartKind;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

Network made(std::vector<Part> parts) { return Network::of(std::move(parts)).value(); }

std::string codeOf(std::vector<Part> parts)
{
    const auto network = Network::of(std::move(parts));
    return network ? "" : network.error().code;
}

std::string inputOf(std::vector<Part> parts)
{
    const auto network = Network::of(std::move(parts));
    return network ? "" : std::get<std::string>(network.error().arguments.at(0).value);
}

bool near(double a, double b) { return a == b || std::fabs(a - b) <= 1e-9 * std::max(std::fabs(a), std::fabs(b)); }

/// The second way: wires between nodes, an ampere in at node 0 and out at node 1, the voltage by elimination.
struct Wires {
    struct Wire {
        std::size_t from, to;
        double ohm;
    };
    std::vector<Wire> wires;
    std::size_t nodes = 2;

    double resistance() const
    {
        // Node 1 is the reference and left out.
        std::vector<std::vector<double>> rows(nodes, std::vector<double>(nodes + 1, 0));
        for (const Wire& w : wires) {
            rows[w.from][w.from] += 1 / w.ohm;
            rows[w.to][w.to] += 1 / w.ohm;
            rows[w.from][w.to] -= 1 / w.ohm;
            rows[w.to][w.from] -= 1 / w.ohm;
        }
        rows[1].assign(nodes + 1, 0);
        rows[1][1] = 1;
        rows[0][nodes] = 1;
        for (std::size_t i = 0; i < nodes; ++i) {
            std::size_t best = i;
            for (std::size_t k = i; k < nodes; ++k)
                if (std::fabs(rows[k][i]) > std::fabs(rows[best][i])) best = k;
            std::swap(rows[i], rows[best]);
            for (std::size_t k = 0; k < nodes; ++k) {
                if (k == i) continue;
                const double factor = rows[k][i] / rows[i][i];
                for (std::size_t c = i; c <= nodes; ++c) rows[k][c] -= factor * rows[i][c];
            }
        }
        return rows[0][nodes] / rows[0][0];
    }
};

/// A random network, as parts and as wires.
class Random {
public:
    explicit Random(unsigned seed) : m_engine(seed) {}
    std::vector<Part> parts;
    Wires wires;

    void grow(std::size_t from, std::size_t to, int depth)
    {
        const auto kind = depth == 0 ? 0 : m_engine() % 3;
        if (kind == 0) {
            const double ohm = std::pow(10.0, 1 + 4 * std::generate_canonical<double, 32>(m_engine));
            parts.push_back(measure::resistor("r" + std::to_string(parts.size()), ohm, 0));
            wires.wires.push_back({from, to, ohm});
            return;
        }
        const std::size_t members = 2 + m_engine() % 2;
        std::size_t at = from;
        for (std::size_t i = 0; i < members; ++i) {
            const std::size_t next = kind == 2 || i + 1 == members ? to : wires.nodes++;
            grow(at, next, depth - 1);
            if (kind == 1) at = next;
        }
        parts.push_back(measure::group(kind == 1 ? PartKind::series : PartKind::parallel, members));
    }

private:
    std::mt19937 m_engine;
};

/// cable + tamper:nc + (alarm:nc | zone) + eol, as most double end-of-line loops are built.
std::vector<Part> doubleEndOfLine(double tolerance_pct = 0, double cable_ohm = 12)
{
    return {measure::cable("cable", 0, cable_ohm), measure::contact("tamper", true),
            measure::contact("alarm", true),       measure::resistor("zone", 4700, tolerance_pct),
            measure::group(PartKind::parallel, 2), measure::resistor("eol", 2200, tolerance_pct),
            measure::group(PartKind::series, 4)};
}

} // namespace

class TestNetwork : public QObject {
    Q_OBJECT

private slots:
    void agreesWithKirchhoff()
    {
        int groups = 0;
        for (unsigned seed = 1; seed <= 300; ++seed) {
            Random random(seed);
            random.grow(0, 1, 3);
            if (random.parts.size() > 64) continue;
            if (random.parts.size() > 1) ++groups;
            const double ours = measure::spanOf(made(random.parts), {}).nominal_ohm;
            const double solved = random.wires.resistance();
            QVERIFY2(std::fabs(ours - solved) <= 1e-9 * solved, qPrintable(QString("seed %1").arg(seed)));
        }
        QVERIFY(groups > 150);
    }
    void contactsAsTheyStand()
    {
        const Network network = made(doubleEndOfLine());
        const auto at = [&](measure::Parts acted) {
            measure::Circumstances circumstances;
            circumstances.acted = acted;
            return measure::spanOf(network, circumstances).most_ohm;
        };
        const auto alarm = measure::partBit(*network.find("alarm"));
        const auto tamper = measure::partBit(*network.find("tamper"));
        QCOMPARE(at(0), 2212.0);
        QCOMPARE(at(alarm), 6912.0);
        QCOMPARE(at(tamper), infinity);
        QCOMPARE(at(tamper | alarm), infinity);
    }
    void theFarEnd()
    {
        const Network network = made(doubleEndOfLine());
        measure::Circumstances shorted;
        shorted.bridged = network.farEnd();
        QCOMPARE(measure::spanOf(network, shorted).most_ohm, 12.0);
        measure::Circumstances opened;
        opened.opened = network.farEnd();
        QCOMPARE(measure::spanOf(network, opened).least_ohm, infinity);
        QCOMPARE(made({measure::cable("cable", 0, 5)}).farEnd(), measure::Parts{0});
        QCOMPARE(made({measure::resistor("eol", 5, 0)}).farEnd(), measure::Parts{1});
    }
    // A chain of two contacts with series resistors across the pair: shorted at the second device the first cable and
    // the second remain, 3 + 4 ohm.
    void theFarEndOfAChain()
    {
        const Network network = made(
            {measure::cable("cable1", 3, 3), measure::contact("a", false), measure::resistor("ra", 680, 0),
             measure::group(PartKind::series, 2), measure::cable("cable2", 4, 4), measure::contact("b", false),
             measure::resistor("rb", 680, 0), measure::group(PartKind::series, 2), measure::resistor("eol", 3900, 0),
             measure::group(PartKind::parallel, 2), measure::group(PartKind::series, 2),
             measure::group(PartKind::parallel, 2), measure::group(PartKind::series, 2)});
        measure::Circumstances shorted;
        shorted.bridged = network.farEnd();
        QVERIFY(near(measure::spanOf(network, shorted).nominal_ohm, 7));
        QVERIFY(near(measure::spanOf(network, {}).nominal_ohm, 3907));
        measure::Circumstances both;
        both.acted = measure::partBit(*network.find("a")) | measure::partBit(*network.find("b"));
        // b: 680 || 3900 = 579.0393; + 4 = 583.0393; || 680 = 313.8972...; + 3.
        const double b = 680.0 * 3900 / 4580 + 4;
        QVERIFY(near(measure::spanOf(network, both).nominal_ohm, 680 * b / (680 + b) + 3));
    }
    // The four wirings that core/measure/loop.h knows are networks like any other.
    void sameAsTheKnownWirings()
    {
        using measure::LoopState;
        const measure::LoopWiring wiring{
            .resistors = 2, .eol_ohm = 2200, .alarm_ohm = 4700, .tolerance_pct = 5, .cable_ohm_max = 12};
        const Network network = made(doubleEndOfLine(5));
        const auto rest = measure::spanOf(network, {});
        measure::Circumstances acted;
        acted.acted = measure::partBit(*network.find("alarm"));
        const auto alarm = measure::spanOf(network, acted);
        QVERIFY(near(rest.least_ohm, *measure::loopWindow(wiring, LoopState::closed)->lower_ohm));
        QVERIFY(near(rest.most_ohm, *measure::loopWindow(wiring, LoopState::closed)->upper_ohm));
        QVERIFY(near(alarm.least_ohm, *measure::loopWindow(wiring, LoopState::alarm)->lower_ohm));
        QVERIFY(near(alarm.most_ohm, *measure::loopWindow(wiring, LoopState::alarm)->upper_ohm));
    }
    void growsWithEachPartAndScales()
    {
        for (unsigned seed = 1; seed <= 40; ++seed) {
            Random random(seed);
            random.grow(0, 1, 3);
            if (random.parts.size() > 64) continue;
            const double before = measure::spanOf(made(random.parts), {}).nominal_ohm;
            auto scaled = random.parts;
            for (Part& each : scaled)
                if (each.kind == PartKind::resistor) each = measure::resistor(each.name, each.ohm.nominal_ohm * 3, 0);
            QVERIFY(near(measure::spanOf(made(scaled), {}).nominal_ohm, 3 * before));
            for (std::size_t i = 0; i < random.parts.size(); ++i) {
                if (random.parts[i].kind != PartKind::resistor) continue;
                auto larger = random.parts;
                larger[i] = measure::resistor(larger[i].name, larger[i].ohm.nominal_ohm * 2, 0);
                QVERIFY(measure::spanOf(made(larger), {}).nominal_ohm > before);
            }
        }
    }
    void replacedInFrontAndAcross()
    {
        const Network network = made(doubleEndOfLine(0, 0));
        measure::Circumstances at;
        at.replaced[0] = {*network.find("eol"), {1000, 1000, 1000}};
        QCOMPARE(measure::spanOf(network, at).nominal_ohm, 1000.0);
        at.inFront = {50, 50, 50};
        QCOMPARE(measure::spanOf(network, at).nominal_ohm, 1050.0);
        at.across = {1050, 1050, 1050};
        QVERIFY(near(measure::spanOf(network, at).nominal_ohm, 525));
    }
    // 5600 ohm 1 % 100 ppm/K over 40 K: 5600 x 0.99 x 0.996 = 5521.824 and 5600 x 1.01 x 1.004 = 5678.624.
    void resistorsDrift()
    {
        const Network network = made({measure::resistor("r", 5600, 1)});
        const auto span = measure::spanOf(network.withDrift(100, 40).value(), {});
        QVERIFY(near(span.least_ohm, 5521.824) && near(span.most_ohm, 5678.624) && span.nominal_ohm == 5600);
        for (const double bad : {-1.0, infinity, std::nan(""), 1e308}) {
            QCOMPARE(network.withDrift(bad, 40).error().code, std::string("measure.out-of-range"));
            QCOMPARE(network.withDrift(100, bad).error().code, std::string("measure.out-of-range"));
        }
        QCOMPARE(network.withDrift(1e5, 11).error().code, std::string("measure.out-of-range"));
    }
    void refused()
    {
        QCOMPARE(codeOf({}), std::string("measure.network-size"));
        QCOMPARE(codeOf(std::vector<Part>(65, measure::resistor("r", 1, 0))), std::string("measure.network-size"));
        QCOMPARE(codeOf({measure::resistor("a", 1, 0), measure::resistor("b", 1, 0)}),
                 std::string("measure.network-order"));
        QCOMPARE(codeOf({measure::resistor("a", 1, 0), measure::group(PartKind::series, 2)}),
                 std::string("measure.network-order"));
        QCOMPARE(codeOf({measure::resistor("a", 1, 0), measure::group(PartKind::series, 0)}),
                 std::string("measure.network-order"));
        QCOMPARE(
            codeOf({measure::resistor("a", 1, 0), measure::resistor("a", 1, 0), measure::group(PartKind::series, 2)}),
            std::string("measure.network-name"));
        QCOMPARE(codeOf({measure::contact("", true)}), std::string("measure.network-name"));
        for (const double bad : {0.0, -1.0, infinity, -infinity, std::nan(""), 1e308})
            QCOMPARE(inputOf({measure::resistor("eol", bad, 1)}), std::string("eol"));
        for (const double bad : {100.0, -101.0, std::nan(""), infinity})
            QCOMPARE(inputOf({measure::resistor("eol", 1000, bad)}), std::string("eol"));
        for (const double bad : {-0.1, infinity, std::nan(""), 1e308})
            QCOMPARE(inputOf({measure::cable("cable", 0, bad)}), std::string("cable"));
        QCOMPARE(inputOf({measure::cable("cable", 5, 4)}), std::string("cable"));
    }
};

QTEST_GUILESS_MAIN(TestNetwork)
#include "network.moc"
