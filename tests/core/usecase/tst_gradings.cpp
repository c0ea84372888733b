#include <QtTest>

#include "core/store/projector.h"
#include "core/usecase/gradings.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;
using play::GradingUsed;
using play::Way;
using usecase::GradingFrom;

namespace {

const ActivityId oars{"slow-oars"};

const catalogue::Activity &slowOars()
{
    return *realCatalogue().activity(oars);
}

/// The first line that goes one way.
GradingUsed firstLine(Way way)
{
    return {way, play::linesOf(slowOars(), way).front().lever};
}

usecase::FirstGrading firstOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    return usecase::firstGradingOf(*usecase::loadFamily(workplace, "Fin"), slowOars());
}

Outcome keepOn(Phone &phone, const GradingUsed &used)
{
    usecase::Workplace workplace = phone.workplace();
    return usecase::keepGrading(workplace, *usecase::loadFamily(workplace, "Fin"), oars, used);
}

std::int64_t eventsOn(Phone &phone)
{
    return *store::EventRepository(phone.database).count();
}

} // namespace

/// The grading used last stands first next time; a therapist's pin stands before it.
class TestGradings : public QObject
{
    Q_OBJECT
private slots:
    void init()
    {
        m_morven = therapistWith({"Fin"});
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        m_ruth->meet(*m_morven);
    }

    void aFirstPlayIsAsItIsWritten()
    {
        const auto first = firstOn(*m_ruth);
        QCOMPARE(first.used.way, Way::AsWritten);
        QCOMPARE(first.from, GradingFrom::Nobody);
    }

    void whatWasUsedLastStandsFirstOnEveryPhoneOfTheHome()
    {
        QVERIFY(keepOn(*m_ruth, firstLine(Way::Easier)).ok());
        QVERIFY(keepOn(*m_ruth, firstLine(Way::Harder)).ok());
        Phone gran("Gran Isobel", store::Role::Caregiver, "h-fin");
        gran.meet(*m_morven);
        gran.meet(*m_ruth);
        for (Phone *phone : {m_ruth.get(), &gran}) {
            QVERIFY(firstOn(*phone).used == firstLine(Way::Harder));
            QCOMPARE(firstOn(*phone).from, GradingFrom::LastTime);
            QVERIFY(*store::Projector(phone->database).matchesRefold());
        }
    }

    void sayingTheSameAgainWritesNothing()
    {
        const auto before = eventsOn(*m_ruth);
        QVERIFY(keepOn(*m_ruth, {}).ok()); // as written is what nobody needs to say
        QCOMPARE(eventsOn(*m_ruth), before);
        QVERIFY(keepOn(*m_ruth, firstLine(Way::Easier)).ok());
        const auto once = eventsOn(*m_ruth);
        QVERIFY(keepOn(*m_ruth, firstLine(Way::Easier)).ok());
        QCOMPARE(eventsOn(*m_ruth), once);
        QVERIFY(keepOn(*m_ruth, {}).ok()); // back to as written is news
        QCOMPARE(firstOn(*m_ruth).used.way, Way::AsWritten);
    }

    void aPinStandsBeforeWhatWasUsedLastUntilItIsTakenOff()
    {
        usecase::Workplace therapist = m_morven->workplace();
        QVERIFY(usecase::pinGrading(therapist, "Fin", oars, firstLine(Way::Easier)).ok());
        QVERIFY(keepOn(*m_ruth, firstLine(Way::Harder)).ok());
        m_ruth->meet(*m_morven);
        QVERIFY(firstOn(*m_ruth).used == firstLine(Way::Easier));
        QCOMPARE(firstOn(*m_ruth).from, GradingFrom::Therapist);
        QVERIFY(usecase::pinGrading(therapist, "Fin", oars, std::nullopt).ok());
        m_ruth->meet(*m_morven);
        QVERIFY(firstOn(*m_ruth).used == firstLine(Way::Harder));
        QVERIFY(*store::Projector(m_ruth->database).matchesRefold());
    }

    void onlyATherapistPinsAndOnlyALineThatIsThere()
    {
        usecase::Workplace parent = m_ruth->workplace();
        QVERIFY(!usecase::pinGrading(parent, "Fin", oars, firstLine(Way::Easier)).ok());
        usecase::Workplace therapist = m_morven->workplace();
        const auto missing =
            usecase::pinGrading(therapist, "Fin", oars, GradingUsed{Way::Harder, absentLever()});
        QVERIFY(!missing.ok());
        QCOMPARE(missing.error().code, ErrorCode::Invalid);
        QCOMPARE(usecase::pinGrading(therapist, "Fin", {"no-such"}, std::nullopt).error().code,
                 ErrorCode::NotFound);
    }

    void aLineThatANewerVersionNoLongerHasDoesNotCount()
    {
        QVERIFY(keepOn(*m_ruth, {Way::Harder, absentLever()}).ok());
        QCOMPARE(firstOn(*m_ruth).from, GradingFrom::Nobody);
    }

    void aGuestKeepsNothing()
    {
        Phone guest("Sitter", store::Role::Guest, "h-fin");
        guest.meet(*m_morven);
        const auto before = eventsOn(guest);
        QVERIFY(keepOn(guest, firstLine(Way::Easier)).ok());
        QCOMPARE(eventsOn(guest), before);
    }

private:
    /// A lever by which Slow Oars is not made harder.
    static catalogue::Lever absentLever()
    {
        for (int i = 0; i < 10; ++i) {
            const auto lever = static_cast<catalogue::Lever>(i);
            if (play::lineFor(slowOars(), {Way::Harder, lever}) == nullptr)
                return lever;
        }
        return catalogue::Lever::Choice;
    }

    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_ruth;
};

QTEST_APPLESS_MAIN(TestGradings)
#include "tst_gradings.moc"
