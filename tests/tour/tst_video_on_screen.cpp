#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/usecase/video_session.h"
#include "tests/tour/meeting.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

namespace {

/// The therapist's own phone with Mairead's box, as a file.
void writeMorvensStore(const QString &file)
{
    QFile::remove(file);
    auto morven = therapistWith({"Mairead"});
    (void)morven->database.run("VACUUM INTO '" + file.toStdString() + "'");
    auto database = store::Database::open(file.toStdString());
    (void)store::DeviceRepository(*database).setDevice(morven->device);
}

} // namespace

/// Guards the video part of job.md scenario 7 through the real screens: Morven plans on hers, Peigi
/// has the list offline on the ferry, and what is not there lets the spare in on both.
class TestVideoOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString m_morven;
    QString m_peigi;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void open(const QString &store, const char *clock)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(store, clock);
    }
    void goTo(const char *route)
    {
        auto *screens = m_app->window->findChild<QObject *>(QStringLiteral("screens"));
        QVERIFY(screens != nullptr);
        QVERIFY(QMetaObject::invokeMethod(screens, "go", Q_ARG(QString, text(route))));
        Hand::settle(300);
    }
    [[nodiscard]] std::vector<usecase::VideoSession> sessionsIn(const QString &store) const
    {
        auto database = store::Database::open(store.toStdString());
        const auto device = store::DeviceRepository(*database).device();
        StillClock clock(*msFromText("2027-01-18T09:00:00Z"));
        SeededEntropy entropy("look");
        usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, **device};
        const auto family = usecase::loadFamily(workplace, "Mairead");
        return *usecase::videoSessions(workplace, *family, *dayFromText("2027-01-18"));
    }
    static QString nameOf(const ActivityId &id)
    {
        return QString::fromStdString(realCatalogue().activity(id)->name);
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
        m_morven = m_folder.filePath(QStringLiteral("morven.lidlark"));
        m_peigi = m_folder.filePath(QStringLiteral("peigi.lidlark"));
        writeMorvensStore(m_morven);
        writeStore(m_peigi, "Mairead", "Peigi", "h-mairead");
    }

    void morvenPlans()
    {
        open(m_morven, "2027-01-18T10:00:00Z");
        goTo("video-plan");
        QVERIFY2(hand().reads(text("The work")), page());
        QVERIFY2(hand().reads(text("Spare, if something is missing")), page());
        QVERIFY2(hand().reads(text("From lid list 1.")), page());
        QVERIFY2(hand().tap(text("A quarter of an hour later")), page());
        QVERIFY2(hand().reads(text("10:15")), page());
        QVERIFY2(hand().tap(text("Another: The work")), page());
        QVERIFY2(hand().tap(text("Plan it")), page());
        const auto sessions = sessionsIn(m_morven);
        QCOMPARE(sessions.size(), std::size_t{1});
        QCOMPARE(toText(sessions[0].plan.day), std::string("2027-01-25"));
        QCOMPARE(sessions[0].plan.minuteOfDay, 615);
        QVERIFY2(hand().reads(nameOf(sessions[0].plan.activities.front())), page());
        QVERIFY2(hand().tap(text("Open it")), page());
        QVERIFY2(hand().reads(text("Take out of your own box")), page());
        QVERIFY2(hand().reads(text("Not yet looked for")), page());
        QVERIFY2(hand().reads(text("10:18")), page()); // three minutes to arrive
    }

    void peigiHasItReady()
    {
        letMeet(m_morven, m_peigi, "2027-01-18T20:00:00Z");
        open(m_peigi, "2027-01-24T18:00:00Z");
        QVERIFY2(hand().tap(text("Video session: have ready")), page());
        QVERIFY2(hand().reads(text("Monday, 25 January, 10:15")), page());
        const auto plan = sessionsIn(m_peigi).front();
        std::set<ItemId> ofSpare;
        for (const workbench::ThingNeeded &thing : plan.things) {
            if (thing.forSpare)
                ofSpare.insert(thing.item);
        }
        QVERIFY(!plan.things.empty() && !ofSpare.contains(plan.things.front().item));
        const std::string first = realCatalogue().item(plan.things.front().item)->name;
        const QString name = QString::fromStdString(first);
        const QString row = name.left(1).toUpper() + name.mid(1);
        QVERIFY2(hand().tap(row + text(": Not here")), page());
        QVERIFY2(hand().reads(text(", in place of ")), page());
        QVERIFY2(hand().tap(row + text(": Here")), page());
        QVERIFY2(!hand().reads(text(", in place of ")), page());
        QVERIFY2(hand().tap(row + text(": Not here")), page());
    }

    void morvenSeesWhatIsMissing()
    {
        m_app.reset();
        letMeet(m_morven, m_peigi, "2027-01-25T09:00:00Z");
        open(m_morven, "2027-01-25T09:30:00Z");
        goTo("video-session");
        QVERIFY2(hand().reads(text("Not there: ")), page());
        QVERIFY2(hand().reads(text("In place of ")), page());
    }

    void calledOffIsGoneFromBoth()
    {
        goTo("video-plan");
        QVERIFY2(hand().tap(text("Call it off")), page());
        m_app.reset();
        letMeet(m_morven, m_peigi, "2027-01-25T09:40:00Z");
        open(m_peigi, "2027-01-25T09:45:00Z");
        QVERIFY2(!hand().reads(text("Video session: have ready")), page());
    }
};

QTEST_MAIN(TestVideoOnScreen)
#include "tst_video_on_screen.moc"
