#include <QtTest>

#include <QFile>
#include <QTemporaryDir>

#include "core/store/event_repository.h"
#include "core/usecase/families.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/remind.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

usecase::FirstAnswers answersFor(const std::string &child, const std::string &adult)
{
    usecase::FirstAnswers answers;
    answers.childAlias = child;
    answers.adultAlias = adult;
    answers.lidList = {{{"pegs"}, 6}};
    return answers;
}

std::int64_t eventsIn(const std::string &file)
{
    auto database = store::Database::openExisting(file);
    return database ? *store::EventRepository(*database).count() : -1;
}

} // namespace

/// Guards several families on one phone: a store each, never mixed (design.md 1); and one reminder
/// a day for them all (job.md F10).
class TestFamilies : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_dir;
    std::unique_ptr<store::FamilyFolder> m_folder;
    StillClock m_clock{islandTime(11, 18, 40)};
    SeededEntropy m_entropy{"families"};

    std::string add(const std::string &child, const std::string &adult)
    {
        const auto file = usecase::addFamily(*m_folder, realCatalogue(), m_clock, m_entropy,
                                             answersFor(child, adult));
        return file ? *file : std::string();
    }
    /// The first store, set up as at the first run.
    void setUpFirst(const std::string &child, const std::string &adult)
    {
        auto database = store::Database::open(m_folder->first());
        usecase::Workplace workplace{*database, realCatalogue(), m_clock, m_entropy, {}};
        QVERIFY(usecase::setUpHome(workplace, answersFor(child, adult)).ok());
    }
    [[nodiscard]] std::vector<usecase::ChildOnPhone> children() const
    {
        const auto families = usecase::familiesIn(*m_folder);
        return usecase::childrenOf(families);
    }
    void playIn(const std::string &file, const std::string &child)
    {
        auto database = store::Database::openExisting(file);
        const auto device = store::DeviceRepository(*database).device();
        usecase::Workplace workplace{*database, realCatalogue(), m_clock, m_entropy, **device};
        QVERIFY(usecase::startPlay(workplace, {child, {"slow-oars"}, {}, std::nullopt}).ok());
    }
    void turnTheReminderOn()
    {
        auto phone = store::Database::open(m_folder->first());
        reminder::Reminder reminder;
        reminder.on = true;
        QVERIFY(usecase::keepReminder(*phone, reminder, {}).ok());
    }
    [[nodiscard]] bool takesTurn() const
    {
        auto phone = store::Database::open(m_folder->first());
        return usecase::takeTurnToRemind(*phone, *m_folder, m_clock).due;
    }

private slots:
    void init()
    {
        m_dir = std::make_unique<QTemporaryDir>();
        m_folder = std::make_unique<store::FamilyFolder>(
            m_dir->filePath(QStringLiteral("home.lidlark")).toStdString());
        m_clock.moveTo(islandTime(11, 18, 40));
    }

    void eachHasAStoreOfItsOwn()
    {
        setUpFirst("Fin", "Ruth");
        const std::int64_t before = eventsIn(m_folder->first());
        const std::string second = add("Lewis", "Catriona");
        QCOMPARE(m_folder->all(), (std::vector<std::string>{m_folder->first(), second}));
        QCOMPARE(eventsIn(m_folder->first()), before);
        const auto all = children();
        QCOMPARE(all.size(), std::size_t{2});
        QCOMPARE(all[0], (usecase::ChildOnPhone{"Fin", m_folder->first(), {}, {}, 0}));
        QCOMPARE(all[1], (usecase::ChildOnPhone{"Lewis", second, {}, {}, 0}));
    }

    /// Two of one alias are told apart, whatever the homes are called.
    void twoOfOneAlias()
    {
        setUpFirst("Fin", "Ruth");
        (void)add("Fin", "Ada");
        (void)add("Fin", "Ada");
        (void)add("Kit", "Ada");
        const auto all = children();
        QCOMPARE(all.size(), std::size_t{4});
        QCOMPARE(all[0].person, std::string("Ruth"));
        QCOMPARE(all[0].number, 0);
        QCOMPARE(all[1].person, std::string("Ada"));
        QCOMPARE(all[1].number, 1);
        QCOMPARE(all[2].number, 2);
        QVERIFY(all[3].person.empty());
    }

    /// A home's name comes first, where it tells them apart; "Home" and "Home" do not.
    void twoOfOneAliasInNamedHomes()
    {
        const std::vector<usecase::FamilyOnPhone> families{
            {"1", "Port Sheal", "Ruth", {"Fin"}, {}, {}},
            {"2", "Home", "Ada", {"Fin"}, {}, {}},
            {"3", "Home", "Piotr", {"Fin"}, {}, {}}};
        const auto all = usecase::childrenOf(families);
        QCOMPARE(all[0], (usecase::ChildOnPhone{"Fin", "1", "Port Sheal", {}, 0}));
        QCOMPARE(all[1], (usecase::ChildOnPhone{"Fin", "2", {}, "Ada", 0}));
        QCOMPARE(all[2], (usecase::ChildOnPhone{"Fin", "3", {}, "Piotr", 0}));
    }

    void whatCannotBeSetUpLeavesNothing()
    {
        QVERIFY(add("", "Ada").empty());
        QVERIFY(m_folder->further().empty());
        QVERIFY(children().empty());
    }

    /// One plain line, and it hurts nobody else.
    void aForeignFileKeepsNobodyFromTheirs()
    {
        setUpFirst("Fin", "Ruth");
        const std::string second = add("Lewis", "Catriona");
        const QString foreign =
            QString::fromStdString(m_folder->first() + ".families/photo.lidlark");
        QFile file(foreign);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(QByteArray("\xff\xd8 not a store").repeated(300));
        file.close();
        const auto families = usecase::familiesIn(*m_folder);
        QCOMPARE(families.size(), std::size_t{3});
        QCOMPARE(families[1].problem->code, ErrorCode::Unreadable);
        QCOMPARE(families[1].file, foreign.toStdString());
        QCOMPARE(usecase::childrenOf(families).size(), std::size_t{2});
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray("\xff\xd8 not a store").repeated(300));
        playIn(second, "Lewis");
    }

    /// The phone's own settings stay with the phone when the first family goes.
    void theFirstFamilyGoesAndThePhoneKeepsItsOwn()
    {
        setUpFirst("Fin", "Ruth");
        const std::string second = add("Lewis", "Catriona");
        {
            auto phone = store::Database::open(m_folder->first());
            store::DeviceRepository local(*phone);
            QVERIFY(local.setLocalState("appearance", "large").ok());
            QVERIFY(local.setLocalState("phone.reminder-said", "2027-01-11").ok());
            QVERIFY(local.setLocalState("sitting.Fin", "whirling").ok());
        }
        const std::int64_t events = eventsIn(m_folder->first());
        const auto aside = usecase::takeFamilyOff(*m_folder, m_folder->first());
        QVERIFY(aside.ok());
        QCOMPARE(children().size(), std::size_t{1});
        {
            auto phone = store::Database::open(m_folder->first());
            store::DeviceRepository local(*phone);
            QCOMPARE(**local.localState("appearance"), std::string("large"));
            QCOMPARE(**local.localState("phone.reminder-said"), std::string("2027-01-11"));
            QVERIFY(!*local.localState("sitting.Fin"));
            QCOMPARE(*store::EventRepository(*phone).count(), std::int64_t{0});
        }
        const auto back = m_folder->bringBack(*aside);
        QCOMPARE(eventsIn(*back), events);
        QCOMPARE(children().size(), std::size_t{2});
    }

    void oneReminderADayForThePhone()
    {
        setUpFirst("Fin", "Ruth");
        (void)add("Lewis", "Catriona");
        QVERIFY(!takesTurn()); // off at the start
        turnTheReminderOn();
        QVERIFY(takesTurn());
        QVERIFY(!takesTurn());
        m_clock.moveTo(islandTime(12, 18, 40));
        QVERIFY(takesTurn());
    }

    /// Whichever family it was.
    void noneOnADayWhenOneFamilyHasPlayed()
    {
        setUpFirst("Fin", "Ruth");
        const std::string second = add("Lewis", "Catriona");
        turnTheReminderOn();
        playIn(second, "Lewis");
        QVERIFY(!takesTurn());
        m_clock.moveTo(islandTime(12, 3, 0)); // still that day
        QVERIFY(!takesTurn());
        m_clock.moveTo(islandTime(12, 18, 40));
        QVERIFY(takesTurn());
    }

    void whatCouldNotBeShownMayBeSaidAgain()
    {
        setUpFirst("Fin", "Ruth");
        turnTheReminderOn();
        QVERIFY(takesTurn());
        {
            auto phone = store::Database::open(m_folder->first());
            QVERIFY(usecase::giveTurnBack(*phone).ok());
        }
        QVERIFY(takesTurn());
    }

    void aPhoneWithoutADayIsSilent()
    {
        setUpFirst("Fin", "Ruth");
        turnTheReminderOn();
        m_clock.moveTo(0);
        QVERIFY(!takesTurn());
    }

    void anOwnLineNamesNobody()
    {
        auto phone = store::Database::open(m_folder->first());
        const std::vector<std::string> names{"Fin"};
        reminder::Reminder own;
        own.hook = reminder::Hook::Own;
        own.ownLine = "After Fin's nap";
        QCOMPARE(usecase::keepReminder(*phone, own, names).error().code, ErrorCode::Invalid);
        own.ownLine = std::string(200, 'x');
        QCOMPARE(usecase::keepReminder(*phone, own, names).error().code, ErrorCode::Invalid);
        own.ownLine = "After the ferry";
        QVERIFY(usecase::keepReminder(*phone, own, names).ok());
        QCOMPARE(*usecase::reminderOf(*phone), own);
    }

    /// What lies in the store can be anything; the reminder then stands as at the start.
    void nonsenseInTheStoreIsNoReminder()
    {
        auto phone = store::Database::open(m_folder->first());
        for (const char *text : {"", "[]", "{\"on\":1,\"minute\":-5}", "{\"minute\":99999}"}) {
            QVERIFY(store::DeviceRepository(*phone).setLocalState("phone.reminder", text).ok());
            QCOMPARE(*usecase::reminderOf(*phone), reminder::Reminder{});
        }
    }
};

QTEST_APPLESS_MAIN(TestFamilies)
#include "tst_families.moc"
