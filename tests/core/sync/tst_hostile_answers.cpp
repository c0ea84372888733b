#include <QtTest>

#include "core/store/coverage.h"
#include "core/sync/last_words.h"

#include "tests/support/counting_storage.h"
#include "tests/support/hostile_crew.h"

#include <nlohmann/json.hpp>

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;
using journal::Event;
using journal::Kind;

namespace {

const std::string brokenPeg = R"({"count":1,"exception":"broken","item":"pegs"})";

} // namespace

/// Ruth's phone is stolen and Rob, the other parent, removes it. Whoever has it answers: what it
/// says past what is accepted of it is kept where it is a removal, and changes nothing for those
/// who had heard of the first one (events.md 10, core/sync/last_words.h).
class TestHostileAnswers : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    std::unique_ptr<CrewPhone> m_rob;
    std::unique_ptr<Forger> m_thief; ///< As things stood before the removal.

    [[nodiscard]] std::vector<CrewPhone *> others() const
    {
        return {m_rob.get(), &m_crew->morven, &m_crew->gran};
    }
    void othersVisit(int times = 3)
    {
        for (int time = 0; time < times; ++time) {
            for (CrewPhone *phone : others())
                (void)m_crew->visit(*phone);
        }
    }
    static void removes(CrewPhone &one, const CrewPhone &other)
    {
        Post post = one.post();
        QVERIFY(removeMember(post, finsBox, other.device.id).ok());
    }
    void robRemovesIt()
    {
        removes(*m_rob, m_crew->ruth);
        othersVisit();
    }
    /// All but the events themselves.
    [[nodiscard]] static std::string shownBy(CrewPhone &phone)
    {
        return stateOf(phone.database, {"event"});
    }
    /// Removals by the stolen phone that are kept.
    [[nodiscard]] int keptBy(CrewPhone &phone) const
    {
        const auto events =
            store::EventRepository(phone.database).ofSubject({finsBoxLane, "members"});
        return static_cast<int>(std::ranges::count_if(*events, [this](const Event &event) {
            return event.device == m_crew->ruth.device.id && event.kind == Kind::MemberRemoved;
        }));
    }
    [[nodiscard]] Event removal(const CrewPhone &of, std::uint64_t ahead, crew::Accepted accepted)
    {
        return m_thief->event(Kind::MemberRemoved,
                              crew::fieldsOf(crew::Removal{of.device.id, std::move(accepted)}),
                              ahead);
    }
    static std::string textOf(const std::vector<Event> &events)
    {
        std::string text;
        for (const Event &event : events)
            text += journal::canonicalText(event) + '\n';
        return text;
    }
    /// One after the other, each a segment of its own.
    void brings(const std::vector<std::vector<Event>> &segments)
    {
        Digest previous = m_thief->header().previous;
        std::uint64_t sequence = m_thief->nextSequence();
        for (const auto &events : segments) {
            SegmentHeader header = m_thief->header(events.size());
            header.sequence = sequence;
            header.previous = previous;
            header.firstCounter = events.front().counter;
            const std::string bytes = m_thief->sealed(textOf(events), header);
            m_crew->folder.write(m_thief->placeOf(sequence), bytes);
            previous = blake2b(bytes);
            ++sequence;
        }
    }
    /// Nothing is shown otherwise, and all go on.
    void nothingComesOfIt(const std::vector<std::string> &before)
    {
        std::size_t place = 0;
        for (CrewPhone *phone : others()) {
            (void)m_crew->look(*phone);
            QCOMPARE(shownBy(*phone), before[place++]);
            const auto refolded = store::Projector(phone->database).matchesRefold();
            QVERIFY(refolded && *refolded);
        }
        QVERIFY(m_crew->goesOn(*m_rob, m_crew->gran));
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->morven));
        QVERIFY(m_crew->goesOn(m_crew->morven, *m_rob));
        QVERIFY(m_crew->visit(m_crew->ruth).out);
    }
    [[nodiscard]] std::vector<std::string> shown() const
    {
        std::vector<std::string> all;
        for (CrewPhone *phone : others())
            all.push_back(shownBy(*phone));
        return all;
    }

private slots:
    void init()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        m_rob = std::make_unique<CrewPhone>("Rob", store::Role::Parent, "h-fin");
        QVERIFY(m_crew->ruth.letIn(*m_rob, finsBox).ok());
        for (int time = 0; time < 2; ++time) {
            (void)m_crew->everybodyVisits(1);
            (void)m_crew->visit(*m_rob);
        }
        (void)m_crew->everybodyVisits(1);
        m_thief = std::make_unique<Forger>(m_crew->ruth, finsBox, finsBoxLane);
    }

    /// It was without a line since: it says honestly that it had not heard of Rob's word.
    void whoAnswersAWeekLaterPutsNobodyOut()
    {
        const auto before = m_crew->folder.files();
        robRemovesIt();
        const auto shownBefore = shown();
        const auto after = m_crew->folder.files();
        m_crew->folder.setBackTo(before);
        removes(m_crew->ruth, *m_rob);
        removes(m_crew->ruth, m_crew->gran);
        QCOMPARE(m_crew->visit(m_crew->ruth).out, false);
        for (const auto &[place, bytes] : after)
            m_crew->folder.write(place, bytes);
        for (CrewPhone *phone : others()) {
            QCOMPARE(kindsOf(m_crew->findingsOf(*phone), m_crew->ruth.device.id),
                     std::vector{FindingKind::Intruder});
        }
        nothingComesOfIt(shownBefore);
        for (CrewPhone *phone : others())
            QCOMPARE(keptBy(*phone), 2);
    }

    /// Then nobody can tell which was first: both are out, but nobody whom the thief wants out too.
    void whoAnswersBeforeAnybodyHeardTakesRobAlong()
    {
        removes(*m_rob, m_crew->ruth);
        removes(m_crew->ruth, *m_rob);
        removes(m_crew->ruth, m_crew->gran);
        (void)m_crew->visit(m_crew->ruth);
        (void)m_crew->visit(*m_rob);
        othersVisit();
        QVERIFY(crewOf(m_crew->morven).removed(m_rob->device.id));
        QVERIFY(crewOf(m_crew->morven).removed(m_crew->ruth.device.id));
        QVERIFY(crewOf(m_crew->morven).has(m_crew->gran.device.id));
        QCOMPARE(membersOf(m_crew->gran), membersOf(m_crew->morven));
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->morven));
        QVERIFY(m_crew->goesOn(m_crew->morven, m_crew->gran));
    }

    /// Whom it lets in, which keys it opens, what it says of the pieces: none of it is even kept.
    void whatElseItSaysIsNotKept()
    {
        robRemovesIt();
        const auto before = shown();
        const auto covered = *store::coverageOf(m_crew->gran.database, finsBoxLane);
        const CrewPhone friendly("Friend", store::Role::Parent, "h-fin");
        crew::Opening opening{{}, finsBoxLane, {}, {}, {}, {m_thief->epoch().id}};
        for (const CrewPhone *phone : others())
            opening.letters[phone->device.id] = crypto::letterTo(
                phone->asMember().letters, std::string(32, 'k'), freshSecret(m_crew->ruth.entropy));
        const std::vector<Event> said{
            m_thief->event(Kind::Exception, brokenPeg),
            m_thief->event(Kind::Member, crew::fieldsOf(friendly.asMember()), 1),
            m_thief->event(Kind::Epoch, crew::fieldsOf(opening), 2),
            m_thief->event(Kind::Met, journal::metFields({{m_rob->device.id.value, 500}}), 3),
            removal(*m_rob, 4, {{finsBoxLane, 0}}),
            removal(m_crew->gran, 5, {}),
            removal(m_crew->morven, 6, {})};
        brings({said});
        for (CrewPhone *phone : others()) {
            const auto count = *store::EventRepository(phone->database).count();
            QCOMPARE(m_crew->look(*phone).received, 3);
            QCOMPARE(*store::EventRepository(phone->database).count(), count + 3);
            QCOMPARE(m_crew->look(*phone).received, 0);
        }
        QVERIFY(*store::coverageOf(m_crew->gran.database, finsBoxLane) == covered);
        nothingComesOfIt(before);
    }

    /// A kept word leaves a hole before it: all that is accepted is here for all that.
    void whatIsHandedOnAfterwardsIsRefusedStill()
    {
        robRemovesIt();
        brings({{removal(*m_rob, 7, {})}});
        othersVisit(1);
        const auto before = shown();
        Event leaving = m_thief->event(Kind::MemberRemoved,
                                       crew::fieldsOf(crew::Removal{m_crew->gran.device.id, {}}));
        leaving.device = m_crew->gran.device.id;
        leaving.counter = 500;
        auto header = m_thief->header(1, handedOnEvents);
        header.firstCounter = 1;
        m_crew->folder.write(m_thief->nextPlace(), m_thief->sealed(textOf({leaving}), header));
        for (CrewPhone *phone : others())
            QCOMPARE(m_crew->look(*phone).received, 0);
        nothingComesOfIt(before);
    }

    /// As if it had been said in time, in the place of what was.
    void aWordUnderANumberThatIsAcceptedIsNotKept()
    {
        robRemovesIt();
        const auto before = shown();
        Event word = removal(*m_rob, 0, {});
        word.counter = 1;
        for (const std::uint8_t content : {handedOnEvents, toldAgain}) {
            auto header = m_thief->header(1, content);
            header.firstCounter = 1;
            m_crew->folder.write(m_thief->nextPlace(), m_thief->sealed(textOf({word}), header));
            for (CrewPhone *phone : others()) {
                QCOMPARE(m_crew->look(*phone).received, 0);
                QCOMPARE(keptBy(*phone), 0);
            }
        }
        nothingComesOfIt(before);
    }

    /// Four words about each, out of the first segments: whatever lies there.
    void whoeverFloodsIsHeardNoLonger()
    {
        robRemovesIt();
        const auto before = shown();
        std::vector<std::vector<Event>> segments(1);
        std::uint64_t ahead = 0;
        for (; ahead < 300; ++ahead)
            segments.front().push_back(removal(*m_rob, ahead, {{finsBoxLane, ahead}}));
        Event large = removal(m_crew->gran, ahead++, {});
        large.fields = nlohmann::json{{"device", m_crew->gran.device.id.value},
                                      {"pad", std::string(LastWords::largest, 'x')}}
                           .dump();
        segments.push_back({large});
        for (int i = 0; i < 2 * LastWords::mostSegments; ++i)
            segments.push_back({removal(i % 2 == 0 ? m_crew->morven : *m_rob, ahead++, {})});
        brings(segments);
        CountingStorage counting(m_crew->folder.storage());
        (void)m_crew->gran.exchange(finsBox, counting);
        const auto asked = counting.counts().requests.at("GET, there");
        QVERIFY2(asked < 3U * LastWords::mostSegments, qPrintable(QString::number(asked)));
        nothingComesOfIt(before);
        for (CrewPhone *phone : others())
            QCOMPARE(keptBy(*phone), 2 * LastWords::mostAboutOne);
    }

    /// Morven had heard more of Ruth than Rob accepts, and says so: Gran is not told to wait for
    /// it.
    void whatIsNotAcceptedIsNotMissed()
    {
        const auto before = m_crew->folder.files();
        QVERIFY(m_crew->counts(m_crew->ruth, 2));
        (void)m_crew->visit(m_crew->ruth);
        (void)m_crew->visit(m_crew->morven);
        const auto after = m_crew->folder.files();
        m_crew->folder.setBackTo(before);
        removes(*m_rob, m_crew->ruth);
        (void)m_crew->visit(*m_rob);
        (void)m_crew->visit(m_crew->gran);
        for (const auto &[place, bytes] : after)
            m_crew->folder.write(place, bytes);
        othersVisit();
        for (CrewPhone *phone : others()) {
            const Findings found = m_crew->visit(*phone).findings;
            QVERIFY(std::ranges::none_of(found, [](const Finding &finding) {
                return finding.kind == FindingKind::Missing;
            }));
            QVERIFY(m_crew->pegsOf(*phone) != 2);
        }
    }

    /// Past what lies before it, which is refused.
    void aWordIsHeardBehindOthers()
    {
        robRemovesIt();
        const auto before = shown();
        brings({{m_thief->event(Kind::Exception, brokenPeg)}, {removal(*m_rob, 1, {})}});
        nothingComesOfIt(before);
        for (CrewPhone *phone : others())
            QCOMPARE(keptBy(*phone), 1);
    }

    /// The thief told again, while it was still in, that what it would say later is gone.
    void whatWasSaidToBeGoneIsNotAskedForWithoutEnd()
    {
        const Event word = removal(*m_rob, 3, {});
        for (CrewPhone *phone : others()) {
            auto recording = store::Recording::begin(phone->database, phone->device, phone->clock);
            QVERIFY(recording
                        ->receiveGone(finsBoxLane, word.device,
                                      {word.counter, journal::identityOf(word)})
                        .ok());
            QVERIFY(recording->commit().ok());
        }
        robRemovesIt();
        const auto before = shown();
        brings({{word}});
        nothingComesOfIt(before);
        for (CrewPhone *phone : others())
            QCOMPARE(keptBy(*phone), 0);
    }

    /// Two phones alone: who removes the other goes on by itself.
    void whereNobodyElseIsInNoAnswerIsHeard()
    {
        HostileFolder folder;
        CrewPhone isla("Isla", store::Role::Parent, "h-isla");
        CrewPhone ben("Ben", store::Role::Parent, "h-isla");
        usecase::Workplace workplace = isla.workplace();
        QVERIFY(usecase::issueBox(workplace, familyOf("Fin")).ok() && isla.found(finsBox).ok());
        QVERIFY(isla.letIn(ben, finsBox).ok());
        for (int time = 0; time < 2; ++time) {
            (void)isla.exchange(finsBox, folder.storage());
            (void)ben.exchange(finsBox, folder.storage());
        }
        removes(isla, ben);
        removes(ben, isla);
        for (int time = 0; time < 2; ++time) {
            QCOMPARE(isla.exchange(finsBox, folder.storage()).out, false);
            QCOMPARE(ben.exchange(finsBox, folder.storage()).out, false);
        }
    }
};

QTEST_APPLESS_MAIN(TestHostileAnswers)
#include "tst_hostile_answers.moc"
