#include <QtTest>

#include <QGuiApplication>
#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/usecase/reading_language.h"
#include "mobile/bridge/sitting.h"
#include "mobile/bridge/spoken_language.h"
#include "tests/tour/listening_voice.h"
#include "tests/tour/meeting.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards job.md scenario 10 through the real screens: Zoya, who does not read, with Adeel, whose
/// phone is in Urdu; later Sana's in English. That the words are right only a person can say.
class TestScenario10OnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;
    std::shared_ptr<QStringList> m_said = std::make_shared<QStringList>();

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    [[nodiscard]] QString store(const char *person) const
    {
        return m_folder.filePath(text(person));
    }
    void open(const char *person, const char *clock)
    {
        m_app.reset();
        m_said->clear();
        m_app = std::make_unique<OpenApp>(store(person), clock, QString(),
                                          std::make_unique<ListeningVoice>(m_said));
    }
    /// What a control of @p screen is called in the language of the app.
    static QString word(const char *screen, const char *english)
    {
        return QCoreApplication::translate(screen, english);
    }
    /// Rows of a list are in the tree of what is seen alone.
    static QQuickItem *seenIn(QQuickItem *place, const QString &name)
    {
        if (place->objectName() == name && place->isVisible())
            return place;
        const QList<QQuickItem *> within = place->childItems();
        for (QQuickItem *child : within) {
            if (QQuickItem *found = seenIn(child, name))
                return found;
        }
        return nullptr;
    }
    [[nodiscard]] QQuickItem *item(const QString &name) const
    {
        QQuickItem *found = seenIn(m_app->window->contentItem(), name);
        if (found == nullptr)
            qFatal("no %s on this page: %s", qPrintable(name), page().constData());
        return found;
    }
    void go(const char *route) const
    {
        QMetaObject::invokeMethod(item(text("screens")), "go", Q_ARG(QString, text(route)));
        Hand::settle(300);
    }
    /// As a child taps: on the picture, whatever it is called.
    void tapPicture(const QString &name) const
    {
        QQuickItem *picture = item(name);
        const QPointF middle = picture->mapToScene(picture->boundingRect().center());
        QTest::mouseClick(m_app->window, Qt::LeftButton, {}, middle.toPoint());
        Hand::settle(700);
    }
    static bool holdsUrdu(const QString &words)
    {
        return std::any_of(words.begin(), words.end(), [](QChar letter) {
            return letter.script() == QChar::Script_Arabic && letter.isLetter();
        });
    }
    [[nodiscard]] int eyes() const { return m_app->graph.household().boxItem({"eyes"})->row.low; }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
        writeStore(store("adeel"), "Zoya", "Adeel", "h-zoya");
        writeStore(store("sana"), "Zoya", "Sana", "h-zoya");
        auto database = store::Database::open(store("adeel").toStdString());
        const auto device = store::DeviceRepository(*database).device();
        StillClock clock(islandTime(11, 12, 0));
        SeededEntropy entropy("urdu");
        usecase::Workplace adeels{*database, realCatalogue(), clock, entropy, **device};
        QVERIFY(usecase::readIn(adeels, "ur").ok());
    }
    void cleanup()
    {
        m_app.reset();
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    }

    void adeelsScreensAreMirroredAndCountInUrdu()
    {
        open("adeel", mondayEvening);
        QCOMPARE(m_app->graph.household().language(), text("ur"));
        QCOMPARE(QGuiApplication::layoutDirection(), Qt::RightToLeft);
        const QString all = hand().words().join(u' ');
        QVERIFY2(all.contains(QRegularExpression(text("[\u06F0-\u06F9]"))), page());
        QVERIFY2(!all.contains(QRegularExpression(text("[0-9]"))), page()); // no code stands here
        // The first place of the tabs lies at the right.
        QVERIFY(item(text("tab-today"))->mapToScene({}).x() >
                item(text("tab-crew"))->mapToScene({}).x());
    }

    void zoyaTapsHerKiteAndChoosesAPictureAndNobodyReads()
    {
        open("adeel", mondayEvening);
        QVERIFY2(hand().tap(word("KiteHead", "Kite: not asked today")), page());
        QVERIFY2(hand().tap(word("KiteScreen", "Read aloud")), page());
        QVERIFY(!m_said->isEmpty() && holdsUrdu(m_said->join(u' ')));
        tapPicture(text("kite-steady"));
        QVERIFY(hand().hold(word("KiteScreen", "adult: hold")));
        QCOMPARE(m_app->graph.sitting().kite(), text("steady"));

        QVERIFY2(hand().tap(word("TodayScreen", "%1 chooses").arg(text("Zoya"))), page());
        const auto menu = m_app->graph.sitting().menu();
        QCOMPARE(menu->menu.offers.size(), std::size_t{3});
        QStringList pictures;
        for (const rotation::Offer &offer : menu->menu.offers)
            pictures.append(text("choice-") +
                            QString::fromStdString(offer.admitted.activity().id.value));
        tapPicture(pictures.constFirst());
        QVERIFY2(hand().hold(word("ChooseScreen", "adult: hold to begin")), page());
        QVERIFY2(m_app->graph.playInHand().active(), page());
        m_app->graph.playInHand().stop();
    }

    void aPlayIsSpokenAndPutBackInUrduAndSanaReadsItInEnglish()
    {
        open("adeel", mondayEvening);
        go("room");
        QVERIFY2(hand().tap(word("RoomScreen", "Nobody else")), page());
        QVERIFY2(hand().tap(word("RoomScreen", "That's who is here")), page());
        go("everything");
        const QString name = QString::fromStdString(
            m_app->graph.household().catalogue().activity({"hidden-harbour-lights"})->name);
        QVERIFY(holdsUrdu(name));
        QVERIFY2(hand().tap(name), page());
        QVERIFY2(m_app->graph.playInHand().active(), page());
        QVERIFY2(hand().tap(word("StepPage", "Read this step aloud")), page());
        QVERIFY(!m_said->isEmpty() && holdsUrdu(m_said->join(u' ')));
        QVERIFY2(hand().tap(word("PlayFoot", "Stop here")), page());
        for (int i = 0; i < 5; ++i)
            tapPicture(text("well-eyes"));
        const QString eyesHome = item(text("well-eyes"))->property("accessibleName").toString();
        QVERIFY2(eyesHome.contains(text("\u06F5")), qPrintable(eyesHome)); // five
        QVERIFY2(hand().tap(word("PutBackScreen", "Something's different")), page());
        const QString eyesName =
            QString::fromStdString(m_app->graph.household().catalogue().item({"eyes"})->name);
        const QString usedUp = QCoreApplication::translate("core", "used up");
        QVERIFY2(hand().tap(eyesName + text(": ") + usedUp), page());
        QVERIFY2(hand().tap(word("DifferentScreen", "The rest is back")), page());
        QCOMPARE(eyes(), 5);
        m_app.reset();

        letMeet(store("adeel"), store("sana"), "2027-01-11T20:00:00Z");
        open("sana", "2027-01-11T20:05:00Z");
        QCOMPARE(m_app->graph.household().language(), text("en"));
        QCOMPARE(QGuiApplication::layoutDirection(), Qt::LeftToRight);
        QCOMPARE(eyes(), 5);
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY2(hand().reads(text("Hidden Harbour Lights")), page());
        QVERIFY2(!holdsUrdu(hand().words().join(u' ')), page());
    }
};

QTEST_MAIN(TestScenario10OnScreen)
#include "tst_scenario_10_on_screen.moc"
