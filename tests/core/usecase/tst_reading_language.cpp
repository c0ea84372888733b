#include <QtTest>

#include "core/child/reading_language.h"
#include "core/store/projector.h"
#include "core/store/recording.h"
#include "core/usecase/hand_over.h"
#include "core/usecase/reading_language.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

std::string readOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    const auto language = usecase::readingLanguage(workplace);
    return language && *language ? **language : std::string("not said");
}

bool say(Phone &phone, const std::string &language)
{
    usecase::Workplace workplace = phone.workplace();
    return usecase::readIn(workplace, language).ok();
}

bool handTo(Phone &phone, const std::string &person)
{
    usecase::Workplace workplace = phone.workplace();
    const auto device = usecase::handOver(workplace, person);
    if (device)
        phone.device = *device;
    return device.ok();
}

std::vector<std::string> writersOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    return *usecase::writersOf(workplace);
}

using Names = std::vector<std::string>;

} // namespace

/// Languages belong to persons, not to devices (job.md A6); who holds a phone can be changed.
class TestReadingLanguage : public QObject
{
    Q_OBJECT
private slots:
    void init()
    {
        m_morven = therapistWith({"Zoya"});
        m_first = phoneOf("Adeel");
        m_second = phoneOf("Adeel", "d-tablet");
    }

    void nobodyHasSaidAtFirst() { QCOMPARE(readOn(*m_first), std::string("not said")); }

    void itFollowsAPersonToAnotherPhoneOfTheHome()
    {
        QVERIFY(say(*m_first, "ur"));
        QCOMPARE(readOn(*m_second), std::string("not said"));
        m_second->meet(*m_first);
        QCOMPARE(readOn(*m_second), std::string("ur"));
        QVERIFY(*store::Projector(m_second->database).matchesRefold());
    }

    void anotherPersonsIsTheirOwn()
    {
        const auto sana = phoneOf("Sana");
        QVERIFY(say(*m_first, "ur"));
        QVERIFY(say(*sana, "en"));
        sana->meet(*m_first);
        m_first->meet(*sana);
        QCOMPARE(readOn(*sana), std::string("en"));
        QCOMPARE(readOn(*m_first), std::string("ur"));
    }

    /// events.md 3: what has seen a value replaces it, whatever the clocks say.
    void whatHasSeenTheOldOneReplacesIt()
    {
        m_first->clock.moveTo(islandTime(13, 18, 0));
        QVERIFY(say(*m_first, "ur"));
        m_second->meet(*m_first);
        m_second->clock.moveTo(islandTime(12, 8, 0));
        QVERIFY(say(*m_second, "pl"));
        m_first->meet(*m_second);
        QCOMPARE(readOn(*m_first), std::string("pl"));
        QCOMPARE(readOn(*m_second), std::string("pl"));
    }

    /// events.md 3.2: neither had seen the other, so the later instant stands, on both phones.
    void ofTwoAtOnceTheLaterStandsEverywhere()
    {
        m_first->clock.moveTo(islandTime(11, 19, 0));
        QVERIFY(say(*m_first, "ur"));
        m_second->clock.moveTo(islandTime(11, 19, 5));
        QVERIFY(say(*m_second, "pl"));
        m_first->meet(*m_second);
        m_second->meet(*m_first);
        QCOMPARE(readOn(*m_first), std::string("pl"));
        QCOMPARE(readOn(*m_second), std::string("pl"));
        QVERIFY(*store::Projector(m_first->database).matchesRefold());
    }

    void theSameAgainWritesNothing()
    {
        QVERIFY(say(*m_first, "ur"));
        const auto before = *store::EventRepository(m_first->database).count();
        QVERIFY(say(*m_first, "ur"));
        QCOMPARE(*store::EventRepository(m_first->database).count(), before);
    }

    void whatIsNoLanguageIsRefusedAndChangesNothing()
    {
        QVERIFY(say(*m_first, "ur"));
        for (const char *wrong : {"", "u", "URDU", "urdu", "u1", "pl-PL"})
            QVERIFY2(!say(*m_first, wrong), wrong);
        QCOMPARE(readOn(*m_first), std::string("ur"));
    }

    /// An event from elsewhere may hold anything.
    void whatIsNoLanguageHasNoEffectWhenReceived()
    {
        auto recording =
            store::Recording::begin(m_first->database, m_first->device, m_first->clock);
        QVERIFY(recording
                    ->say({journal::LaneKind::Home, "h-zoya"}, journal::Kind::Reads,
                          child::fieldsOf(child::ReadingLanguage{"Adeel", "../x"}))
                    .ok());
        QVERIFY(recording->commit().ok());
        QCOMPARE(readOn(*m_first), std::string("not said"));
        QVERIFY(*store::Projector(m_first->database).matchesRefold());
    }

    /// A guest seals into the home lane and cannot read it (events.md 4).
    void aGuestsStaysOnThePhone()
    {
        const auto guest = phoneOf("Archie", "d-archie", store::Role::Guest);
        const auto before = *store::EventRepository(guest->database).count();
        QVERIFY(say(*guest, "pl"));
        QCOMPARE(readOn(*guest), std::string("pl"));
        QCOMPARE(*store::EventRepository(guest->database).count(), before);
        QCOMPARE(writersOn(*guest), Names{"Archie"});
    }

    void aTherapistsStaysOnThePhone()
    {
        QVERIFY(say(*m_morven, "ur"));
        QCOMPARE(readOn(*m_morven), std::string("ur"));
        QVERIFY(!handTo(*m_morven, "Sana"));
    }

    void onePhoneInTwoHandsReadsAndWritesAsWhoeverHoldsIt()
    {
        QVERIFY(say(*m_first, "ur"));
        QCOMPARE(writersOn(*m_first), (Names{"Adeel", "Sana"}));
        QVERIFY(handTo(*m_first, "Sana"));
        QCOMPARE(writersOn(*m_first), (Names{"Adeel", "Sana"}));
        QCOMPARE(readOn(*m_first), std::string("not said"));
        QVERIFY(say(*m_first, "en"));
        QVERIFY(handTo(*m_first, "Adeel"));
        QCOMPARE(readOn(*m_first), std::string("ur"));
        QCOMPARE((*store::DeviceRepository(m_first->database).device())->person,
                 std::string("Adeel"));
    }

    void nobodyFromElsewhereAndNoChildIsHandedThePhone()
    {
        QVERIFY(!handTo(*m_first, "Zoya"));
        QVERIFY(!handTo(*m_first, "Ruth"));
        QCOMPARE(m_first->device.person, std::string("Adeel"));
    }

private:
    std::unique_ptr<Phone> phoneOf(const std::string &person, const std::string &device = {},
                                   store::Role role = store::Role::Parent)
    {
        auto phone = std::make_unique<Phone>(person, role, "h-zoya");
        if (!device.empty())
            phone->device.id = {device};
        (void)store::DeviceRepository(phone->database).setDevice(phone->device);
        phone->meet(*m_morven);
        return phone;
    }

    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_first;
    std::unique_ptr<Phone> m_second;
};

QTEST_APPLESS_MAIN(TestReadingLanguage)
#include "tst_reading_language.moc"
