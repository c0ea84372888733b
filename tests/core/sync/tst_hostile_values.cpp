#include <QtTest>

#include "tests/support/hostile_crew.h"

#include <nlohmann/json.hpp>

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;
using journal::Event;
using journal::Kind;

namespace {

const std::string onePeg = R"({"count":1,"item":"pegs"})";

std::string lineWith(const Event &event, const std::function<void(nlohmann::json &)> &change)
{
    auto json = nlohmann::json::parse(journal::canonicalText(event));
    change(json);
    return json.dump() + "\n";
}

std::string nested(std::size_t depth)
{
    return R"({"item":)" + std::string(depth, '[') + std::string(depth, ']') + "}";
}

} // namespace

/// What a member may seal and sign, and still must not be believed (events.md 2, 3, 4;
/// core/sync/FORMAT.md 4): Gran's tablet keeps to none of the rules.
class TestHostileValues : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    std::unique_ptr<Forger> m_gran;

    void liesThere(const std::string &bytes, FindingKind kind)
    {
        const std::string before = stateOf(m_crew->ruth.database);
        m_crew->folder.write(m_gran->nextPlace(), bytes);
        const Exchanged report = m_crew->look(m_crew->ruth);
        QCOMPARE(report.received, 0);
        QCOMPARE(kindsOf(report.findings, m_crew->gran.device.id), std::vector{kind});
        QCOMPARE(stateOf(m_crew->ruth.database), before);
    }
    [[nodiscard]] Event found(std::uint64_t ahead = 0) const
    {
        return m_gran->event(Kind::Found, onePeg, ahead);
    }
    [[nodiscard]] std::string sealed(const std::string &line) const
    {
        return m_gran->sealed(line, m_gran->header());
    }

private slots:
    void initTestCase()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        m_gran = std::make_unique<Forger>(m_crew->gran, finsBox, finsBoxLane);
    }
    void cleanup() { m_crew->folder.remove(m_gran->nextPlace()); }
    void cleanupTestCase() { QVERIFY(m_crew->goesOn(m_crew->morven, m_crew->ruth)); }

    void absurdCounters()
    {
        for (const std::uint64_t counter : {std::uint64_t{0}, std::uint64_t{1} << 63,
                                            std::numeric_limits<std::uint64_t>::max()}) {
            const auto line =
                lineWith(found(), [counter](nlohmann::json &json) { json["counter"] = counter; });
            auto header = m_gran->header();
            header.firstCounter = counter;
            liesThere(m_gran->sealed(line, header), FindingKind::Damaged);
        }
    }
    void theLargestCounterWaitsForWhatIsBeforeIt()
    {
        Event event = found();
        event.counter = (std::uint64_t{1} << 63) - 1;
        auto header = m_gran->header();
        header.firstCounter = event.counter;
        liesThere(m_gran->sealed(journal::canonicalText(event) + "\n", header),
                  FindingKind::Missing);
    }
    void aGapBeforeItOrWithin()
    {
        auto header = m_gran->header();
        ++header.firstCounter;
        liesThere(m_gran->sealed(journal::canonicalText(found(1)) + "\n", header),
                  FindingKind::Missing);
        liesThere(m_gran->sealed({found(), found(2)}), FindingKind::Damaged);
    }
    void aSecondEventUnderOneCounter()
    {
        Event event = found();
        --event.counter;
        auto header = m_gran->header();
        --header.firstCounter;
        liesThere(m_gran->sealed(journal::canonicalText(event) + "\n", header),
                  FindingKind::Forked);
    }
    /// Told again is what was said, not something else in its stead.
    void aPastThatIsToldOtherwise()
    {
        Event event = found();
        event.counter = 1;
        auto header = m_gran->header(1, toldAgain);
        header.firstCounter = 1;
        liesThere(m_gran->sealed(journal::canonicalText(event) + "\n", header),
                  FindingKind::Forked);
    }
    void absurdInstants()
    {
        for (const std::int64_t ms : {std::int64_t{-1}, std::int64_t{32'503'680'000'001},
                                      std::numeric_limits<std::int64_t>::max()}) {
            liesThere(
                sealed(lineWith(found(), [ms](nlohmann::json &json) { json["instant"] = ms; })),
                FindingKind::Damaged);
        }
        liesThere(sealed(lineWith(found(), [](nlohmann::json &json) { json["instant"] = 1.5; })),
                  FindingKind::Damaged);
    }
    void anotherLane()
    {
        Event event = found();
        event.lane = finsHomeLane;
        liesThere(m_gran->sealed({event}), FindingKind::Damaged);
        event.lane = {journal::LaneKind::Box, "b-rory"};
        liesThere(m_gran->sealed({event}, handedOnEvents), FindingKind::Damaged);
    }
    void anotherAuthor()
    {
        Event event = found();
        event.device = m_crew->morven.device.id;
        liesThere(m_gran->sealed({event}), FindingKind::Damaged);
        liesThere(m_gran->sealed({event}, handedOnEvents), FindingKind::Intruder);
    }
    void tooMuch()
    {
        std::string noise(1'200'000, '\0');
        for (char &byte : noise)
            byte = static_cast<char>(*m_crew->gran.entropy.freshId().begin());
        liesThere(sealed(noise) + std::string(1'000'000, 'x'), FindingKind::Damaged);
        liesThere(sealed(std::string(8'000'001, ' ')), FindingKind::Damaged);
        liesThere(sealed(std::string(7'999'999, ' ')), FindingKind::Damaged);
    }
    void nestedDeeperThanAStack()
    {
        for (const std::size_t depth : {std::size_t{10'000}, std::size_t{3'900'000}}) {
            Event event = found();
            event.fields = "{}";
            std::string line = journal::canonicalText(event) + "\n";
            line.replace(line.find("{}"), 2, nested(depth));
            liesThere(sealed(line), FindingKind::Damaged);
        }
    }
    void textThatIsNone()
    {
        for (const char *bytes : {"\xff", "\xc0\xaf", "\xed\xa0\x80", "\xf4\x90\x80\x80",
                                  "\xe2\x82", R"(\ud800)", R"(\u0041)"}) {
            std::string line = journal::canonicalText(found()) + "\n";
            line.replace(line.find("Gran"), 4, bytes);
            liesThere(sealed(line), FindingKind::Damaged);
        }
    }
    void anotherSpelling()
    {
        const std::string line = journal::canonicalText(found());
        std::string twice = line;
        twice.insert(1, R"("author":"Ruth",)");
        for (const std::string &other : {twice, line + " ", line + "\r", "[" + line + "]"})
            liesThere(sealed(other + "\n"), FindingKind::Damaged);
    }

    /// Gran says that she holds more of everybody than there is. It is named, and silences nobody.
    /// (The last one: it stays.)
    void whatNobodyHasWritten()
    {
        const std::map<std::string, std::uint64_t> lie{
            {m_crew->ruth.device.id.value, std::uint64_t{1} << 62},
            {m_crew->morven.device.id.value, std::numeric_limits<std::uint64_t>::max()}};
        m_crew->folder.write(m_gran->nextPlace(),
                             m_gran->sealed({m_gran->event(Kind::Met, journal::metFields(lie))}));
        for (CrewPhone *phone : {&m_crew->ruth, &m_crew->morven}) {
            const Exchanged report = m_crew->visit(*phone);
            QVERIFY(!report.copied);
            for (const CrewPhone *of : {&m_crew->ruth, &m_crew->morven})
                QCOMPARE(kindsOf(report.findings, of->device.id),
                         std::vector{FindingKind::Missing});
        }
    }
};

QTEST_APPLESS_MAIN(TestHostileValues)
#include "tst_hostile_values.moc"
