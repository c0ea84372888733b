#include <QtTest>

#include "core/box/box_events.h"
#include "core/box/place.h"
#include "core/journal/erasure.h"

#include "tests/support/hostile_crew.h"

using namespace lidlark;
using namespace lidlark::sync;
using namespace lidlark::test;
using journal::Event;
using journal::Kind;

/// A guest with his own keys and no manners (events.md 4 and 10): what he may not say has no
/// effect, and what was said before he came stays shut.
class TestHostileGuest : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<HostileCrew> m_crew;
    std::unique_ptr<CrewPhone> m_archie;
    HostileFolder::Files m_beforeHim;

    /// What he had no right to say is kept and counts for nothing (events.md 4): only the events
    /// themselves may differ.
    void saysInVain(const Event &event)
    {
        std::map<CrewPhone *, std::string> before;
        for (CrewPhone *phone : {&m_crew->ruth, &m_crew->gran})
            before[phone] = stateOf(phone->database, {"event"});
        const Place place = Forger(*m_archie, finsBox, event.lane).nextPlace();
        m_crew->folder.write(place, sealedByItself(*m_archie, event));
        for (const auto &[phone, state] : before) {
            const Exchanged report = m_crew->look(*phone);
            QVERIFY(report.findings.empty());
            QCOMPARE(report.received, 1);
            QCOMPARE(stateOf(phone->database, {"event"}), state);
        }
    }
    /// As the next of @p phone, which knows of it.
    static std::string sealedByItself(CrewPhone &phone, const Event &event)
    {
        const Forger forger(phone, finsBox, event.lane);
        std::string bytes = forger.sealed({event});
        auto recording = store::Recording::begin(phone.database, phone.device, phone.clock);
        (void)recording->receive(event);
        (void)recording->commit();
        (void)store::SegmentRepository(phone.database)
            .keep({forger.epoch().id, phone.device.id, forger.nextSequence(), finsBox, event.lane,
                   blake2b(bytes), event.counter, 0, bytes});
        return bytes;
    }
    /// What would take the last word of a kind.
    std::string erasing(Kind kind)
    {
        journal::Erasure erasure;
        const auto events = store::EventRepository(m_crew->ruth.database).all();
        for (const Event &event : *events) {
            if (event.kind == kind)
                erasure.events = {journal::identityOf(event)};
        }
        return journal::fieldsOf(erasure);
    }
    void saysInVain(const journal::Lane &lane, Kind kind, const std::string &fields)
    {
        saysInVain(Forger(*m_archie, finsBox, lane).event(kind, fields));
    }

private slots:
    void initTestCase()
    {
        m_crew = std::make_unique<HostileCrew>();
        QVERIFY(m_crew->ready);
        usecase::Workplace ruths = m_crew->ruth.workplace();
        const auto play = usecase::startPlay(ruths, {"Fin", {"dough-forecast"}, {}, {}});
        QVERIFY(play && usecase::putBack(ruths, *play, {}, {}));
        QVERIFY(m_crew->counts(m_crew->ruth, 5));
        QVERIFY(m_crew->everybodyVisits());
        m_beforeHim = m_crew->folder.files();
        m_archie = std::make_unique<CrewPhone>("Archie", store::Role::Guest, "h-fin");
        crew::Member member = m_archie->asMember(store::todayOf(m_crew->ruth.clock)->day + 6);
        member.was = m_crew->morven.device.id; // so he says
        Post ruth = m_crew->ruth.post();
        const auto welcome = sync::letIn(ruth, finsBox, member);
        QVERIFY(welcome.ok());
        Post his = m_archie->post();
        QVERIFY(settleIn(his, *welcome).ok());
        m_archie->device = his.device;
        (void)m_crew->visit(m_crew->ruth);
        QVERIFY(m_crew->visit(*m_archie).findings.empty());
        QVERIFY(m_crew->everybodyVisits());
    }

    void nothingFromBeforeHimOpens()
    {
        const auto book = CrewBook::open(m_archie->post(), finsBox);
        QVERIFY(book && !book->held().empty());
        QVERIFY(m_beforeHim.size() > 5);
        int tried = 0;
        for (const auto &[place, bytes] : m_beforeHim) {
            const auto header = headerOf(bytes);
            QVERIFY(header.has_value());
            const std::string seal =
                bytes.substr(headerSize, bytes.size() - headerSize - sizeof(crypto::Signature));
            for (const HeldEpoch &held : book->held()) {
                QVERIFY(held.epoch.id != header->epoch);
                QVERIFY(!crypto::opened(seal, bytes.substr(0, headerSize), sealKeyOf(held.epoch),
                                        header->nonce));
                ++tried;
            }
            for (const auto &[device, member] : book->crew().everMembers()) {
                for (const HeldEpoch &held : book->held())
                    QVERIFY(place.folder != folderName(held.epoch, device));
            }
        }
        qInfo("%d keys tried on files", tried);
        QVERIFY(eventsIn(m_archie->database, journal::LaneKind::Home).empty());
        QVERIFY(eventsIn(m_archie->database, journal::LaneKind::Goals).empty());
    }

    void whoIsInIsNotHisToSay()
    {
        crew::Member friendOfHis = m_archie->asMember();
        friendOfHis.device = {"d-friend"};
        friendOfHis.role = crew::Role::Parent;
        saysInVain(finsBoxLane, Kind::Member, crew::fieldsOf(friendOfHis));
        crew::Member himself = m_archie->asMember();
        himself.role = crew::Role::Therapist;
        saysInVain(finsBoxLane, Kind::Member, crew::fieldsOf(himself));
        for (const CrewPhone *phone : {&m_crew->ruth, &m_crew->morven})
            saysInVain(finsBoxLane, Kind::MemberRemoved,
                       crew::fieldsOf(crew::Removal{phone->device.id, {{finsBoxLane, 0}}}));
    }

    /// A key that he makes himself, given to everybody, for them to write the goals under.
    void noEpochIsHisToOpen()
    {
        crew::Opening opening{{}, {journal::LaneKind::Goals, finsBox}, {}, {}, {}, {}};
        for (CrewPhone *phone : {&m_crew->morven, &m_crew->ruth, m_archie.get()})
            opening.letters[phone->device.id] = crypto::letterTo(
                phone->asMember().letters, std::string(32, 'k'), freshSecret(m_archie->entropy));
        saysInVain(finsBoxLane, Kind::Epoch, crew::fieldsOf(opening));
        const auto book = CrewBook::open(m_crew->ruth.post(), finsBox);
        QVERIFY(std::ranges::none_of(book->openings(), [&](const crew::Opening &one) {
            return one.by == m_archie->device.id;
        }));
        opening.lane = finsHomeLane;
        saysInVain(finsBoxLane, Kind::Epoch, crew::fieldsOf(opening));
    }

    void noKindThatIsNotHis_data()
    {
        QTest::addColumn<QByteArray>("lane");
        QTest::addColumn<int>("kind");
        QTest::addColumn<QByteArray>("fields");
        const auto row = [](const char *name, const journal::Lane &lane, Kind kind,
                            const std::string &fields) {
            QTest::newRow(name) << QByteArray::fromStdString(toText(lane)) << int(kind)
                                << QByteArray::fromStdString(fields);
        };
        row("the end of a count", finsBoxLane, Kind::Erased, erasing(Kind::Count));
        row("the end of a play", finsHomeLane, Kind::Erased, erasing(Kind::PlayStarted));
        row("a count", finsBoxLane, Kind::Count, box::fieldsOf(box::Counted{{"pegs"}, 1, 0}));
        row("a place", finsBoxLane, Kind::Place, box::fieldsOfPlace("away", "sold"));
        row("a lid list", finsBoxLane, Kind::Revision,
            box::fieldsOf(box::Revision{9, {{{"pegs"}, 90}}}));
    }
    /// Said by somebody who may, the same words count.
    void noKindThatIsNotHis()
    {
        QFETCH(QByteArray, lane);
        QFETCH(int, kind);
        QFETCH(QByteArray, fields);
        const journal::Lane where = *journal::laneFromText(lane.toStdString());
        saysInVain(where, static_cast<Kind>(kind), fields.toStdString());
        CrewPhone &who = where == finsBoxLane ? m_crew->morven : m_crew->ruth;
        const std::string before = stateOf(m_crew->gran.database, {"event"});
        const Forger forger(who, finsBox, where);
        const Place place = forger.nextPlace();
        m_crew->folder.write(place, sealedByItself(who, forger.event(static_cast<Kind>(kind),
                                                                     fields.toStdString())));
        QCOMPARE(m_crew->look(m_crew->gran).received, 1);
        QVERIFY(stateOf(m_crew->gran.database, {"event"}) != before);
        (void)m_crew->look(m_crew->ruth);
    }

    /// Neither in his own name nor as the therapist's phone that he says he was.
    void nobodyElsesWords()
    {
        const Forger archie(*m_archie, finsBox, finsBoxLane);
        Event event = archie.event(Kind::MemberRemoved,
                                   crew::fieldsOf(crew::Removal{m_crew->gran.device.id, {}}));
        for (const DeviceId &device :
             {m_crew->morven.device.id, m_crew->gran.device.id, DeviceId{"d-nobody"}}) {
            event.device = device;
            event.counter = 900;
            m_crew->folder.write(archie.nextPlace(), archie.sealed({event}, handedOnEvents));
            const std::string before = stateOf(m_crew->ruth.database);
            QCOMPARE(kindsOf(m_crew->findingsOf(m_crew->ruth), m_archie->device.id),
                     std::vector{FindingKind::Intruder});
            QCOMPARE(m_crew->look(m_crew->ruth).received, 0);
            QCOMPARE(stateOf(m_crew->ruth.database), before);
        }
        m_crew->folder.remove(archie.nextPlace());
    }

    /// The goals' lane has no key of his, so he can put nothing where anybody looks.
    void noLaneThatIsNotHis()
    {
        const auto book = CrewBook::open(m_archie->post(), finsBox);
        using enum journal::LaneKind;
        for (const HeldEpoch &held : book->held()) {
            QVERIFY(held.epoch.lane.kind != Goals && held.epoch.lane.kind != CheckIns);
            QVERIFY(held.epoch.lane.kind != Home || held.writer == m_archie->device.id);
        }
    }

    void theOthersGoOn()
    {
        (void)m_crew->everybodyVisits();
        QVERIFY(m_crew->goesOn(m_crew->gran, m_crew->ruth));
        QVERIFY(m_crew->goesOn(m_crew->ruth, m_crew->gran));
    }
};

QTEST_APPLESS_MAIN(TestHostileGuest)
#include "tst_hostile_guest.moc"
