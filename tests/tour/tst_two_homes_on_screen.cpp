#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/usecase/keep_box.h"
#include "tests/tour/meeting.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards job.md scenario 12 through the real screens: Effie's one box, two homes, and in the
/// second a baby of nine months and a dog.
class TestTwoHomesOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString m_kirsty;
    QString m_aaron;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void open(const QString &store, const char *clock)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(store, clock);
    }
    /// Kirsty said on Sunday that the box is at her home.
    static void sayItIsAtMums(const QString &store)
    {
        auto database = store::Database::open(store.toStdString());
        const auto device = store::DeviceRepository(*database).device();
        StillClock clock(islandTime(10, 18, 0));
        SeededEntropy entropy("sunday");
        usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, **device};
        QVERIFY(usecase::sayPlace(workplace, "Effie", "h-effie-mum", "at Mum's").ok());
    }
    /// The activities offered on Today.
    [[nodiscard]] std::vector<const catalogue::Activity *> offers() const
    {
        std::vector<const catalogue::Activity *> offered;
        for (const QString &name : hand().names().filter(text(". play "))) {
            for (const catalogue::Activity &activity : realCatalogue().activities()) {
                if (name.startsWith(QString::fromStdString(activity.name)))
                    offered.push_back(&activity);
            }
        }
        return offered;
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_kirsty = m_folder.filePath(text("kirsty"));
        m_aaron = m_folder.filePath(text("aaron"));
        writeStore(m_kirsty, "Effie", "Kirsty", "h-effie-mum");
        writeStore(m_aaron, "Effie", "Aaron", "h-effie-dad");
        sayItIsAtMums(m_kirsty);
        letMeet(m_kirsty, m_aaron, "2027-01-10T19:00:00Z");
    }
    void cleanup() { m_app.reset(); }

    /// Monday at Aaron's: where it is, who said so and when; and nothing that needs it or that a
    /// baby may not meet (activities.md 1.4).
    void onMondayTheBoxIsAtMums()
    {
        open(m_aaron, "2027-01-11T18:00:00Z");
        using enum catalogue::Tag;
        const catalogue::TagSet never{Small, Coin,  Balloon, Elastic, Foam,
                                      Foil,  Straw, Sticker, Cord,    Dough};
        QVERIFY2(offers().size() == 3, page().constData());
        for (const catalogue::Activity *activity : offers()) {
            QVERIFY2((activity->cautions & never).empty(), activity->name.c_str());
            for (const catalogue::ItemUse &use : activity->items)
                QVERIFY2(use.source == catalogue::Source::Home || use.role != catalogue::Role::Must,
                         activity->name.c_str());
        }
        QVERIFY(hand().tap(text("Box")));
        QVERIFY2(hand().reads(text("At Mum's, says Kirsty, yesterday")), page().constData());
    }

    /// Wednesday: "Box is here", the same box, the stricter gate, and the high shelf at the end.
    void onWednesdayTheBoxIsHere()
    {
        open(m_aaron, "2027-01-13T17:30:00Z");
        QVERIFY(hand().tap(text("Box")));
        QVERIFY2(hand().tap(text("Box is here")), page().constData());
        const auto place = m_app->graph.household().family()->place;
        QCOMPARE(place->place, std::string("h-effie-dad"));
        QCOMPARE(place->author, std::string("Aaron"));
        QVERIFY(hand().tap(text("Today")));
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(hand().find(text("Slow Oars")) != nullptr, page().constData());
        QVERIFY(hand().tap(text("Slow Oars")));
        QVERIFY2(hand().tap(text("Stop here")), page().constData());
        QVERIFY2(hand().reads(text("Keep the box out of Jamie's reach.")), page().constData());
    }

    /// Kirsty sees the box's place and counts, not how often Aaron played, nor his notes.
    void kirstySeesTheBoxAndNotAaronsPlays()
    {
        open(m_aaron, "2027-01-13T17:30:00Z");
        QVERIFY(hand().tap(text("Box")));
        QVERIFY(hand().tap(text("Box is here")));
        QVERIFY(hand().tap(text("Today")));
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY(hand().tap(text("Slow Oars")));
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY2(hand().tap(text("All back in the box?")), page().constData());
        m_app.reset();
        letMeet(m_kirsty, m_aaron, "2027-01-14T09:00:00Z");
        open(m_kirsty, "2027-01-14T09:05:00Z");
        QVERIFY(hand().tap(text("Box")));
        QVERIFY2(hand().reads(text("says Aaron, yesterday")), page().constData());
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY2(!hand().reads(text("Slow Oars")), page().constData());
        QVERIFY(m_app->graph.household().family()->plays.empty());
    }
};

QTEST_MAIN(TestTwoHomesOnScreen)
#include "tst_two_homes_on_screen.moc"
