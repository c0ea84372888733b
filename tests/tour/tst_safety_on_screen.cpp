#include <QtTest>

#include <QDesktopServices>
#include <QTemporaryDir>
#include <QUrl>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/sitting.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Stands where the phone's own dialler would be asked.
class Dialler : public QObject
{
    Q_OBJECT

public:
    QUrl asked;
    Dialler() { QDesktopServices::setUrlHandler(QStringLiteral("tel"), this, "dial"); }
    ~Dialler() override { QDesktopServices::unsetUrlHandler(QStringLiteral("tel")); }
    Q_DISABLE_COPY_MOVE(Dialler)

public slots:
    void dial(const QUrl &url) { asked = url; }
};

/// Guards job.md scenarios 2, 3 and 5 and safety.md EM-01 to EM-05 through the real screens.
class TestSafetyOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    void start(const std::string &child, const std::string &person, const std::string &home)
    {
        m_app.reset();
        const QString file =
            m_folder.filePath(QString::fromStdString(child) + QStringLiteral(".lidlark"));
        writeStore(file, child, person, home);
        m_app = std::make_unique<OpenApp>(file, mondayEvening);
    }
    [[nodiscard]] int inTheBox(const char *item) const
    {
        const auto family = m_app->graph.household().family();
        for (const store::ItemRow &row : family->items) {
            if (row.item.value == item)
                return row.high;
        }
        return -1;
    }
    /// Alone in the room with the child, right beside.
    void saidWhoIsHere()
    {
        QVERIFY(hand().tap(text("Who is here")));
        QVERIFY(hand().tap(text("Nobody else")));
        QVERIFY(hand().tap(text("Right beside")));
        QVERIFY(hand().tap(text("That's")));
    }
    void begin(const char *activity)
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(hand().tap(text(activity)), qPrintable(hand().names().join(u'|')));
    }
    /// Up to the tray, with @p eyes tapped home in it: at Lewis's they are counted (Mirren is two).
    void countEyesHomeAtLewiss(int eyes)
    {
        start("Lewis", "Catriona", "h-lewis");
        saidWhoIsHere();
        begin("Hidden Harbour Lights");
        QVERIFY(hand().tap(text("Stop here")));
        for (int eye = 0; eye < eyes; ++eye)
            QVERIFY2(hand().tap(text("Stick-on eyes:")), qPrintable(hand().names().join(u'|')));
    }
    void loseTwoEyesAtLewiss()
    {
        countEyesHomeAtLewiss(4);
        QVERIFY(hand().tap(text("Something's different")));
        QVERIFY(hand().tap(text("Stick-on eyes: lost")));
        QVERIFY(hand().tap(text("2")));
        QVERIFY(hand().tap(text("The rest is back")));
        QVERIFY(hand().reads(text("Two stick-on eyes are missing.")));
    }
    /// Why a control cannot be pressed now, as a screen reader says it.
    QString reasonOf(const char *control)
    {
        QQuickItem *item = hand().find(text(control));
        const QAccessibleInterface *spoken =
            item != nullptr ? QAccessible::queryAccessibleInterface(item) : nullptr;
        return spoken != nullptr ? spoken->text(QAccessible::Description) : QString();
    }
    /// One of the three on Today can be played on a chair or a lap.
    bool aSeatedOfferStands()
    {
        using enum catalogue::Position;
        const auto &all = m_app->graph.household().catalogue().activities();
        return std::any_of(all.begin(), all.end(), [this](const catalogue::Activity &activity) {
            const bool seated = std::any_of(
                activity.positions.begin(), activity.positions.end(),
                [](catalogue::Position position) { return position == Chair || position == Lap; });
            return seated && hand().reads(QString::fromStdString(activity.name));
        });
    }
    void burst()
    {
        start("Rory", "Struan", "h-rory");
        saidWhoIsHere();
        begin("Slow-Sky Taps");
        QVERIFY(hand().tap(text("It burst")));
    }
    void openHomeSheet()
    {
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Home sheet")));
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void cleanup() { m_app.reset(); }

    /// safety.md SP-04: where a small child lives, the closing count cannot be skipped.
    void smallPartsAreCountedHomeBeforeTheYes()
    {
        countEyesHomeAtLewiss(0);
        QVERIFY(hand().reads(text("Keep the box out of Mirren's reach.")));
        QCOMPARE(reasonOf("All back in the box?"),
                 text("First count the stick-on eyes home: 0 of 6."));
        QVERIFY(hand().tap(text("All back in the box?")));
        QVERIFY(hand().reads(text("Everything home")));
        QVERIFY(hand().tap(text("Something's different")));
        QCOMPARE(reasonOf("The rest is back"), text("First count the stick-on eyes home: 0 of 6."));
        QVERIFY(hand().tap(text("The rest is back")));
        QVERIFY(hand().tap(text("Back to the tray")));
        for (int eye = 0; eye < 6; ++eye)
            QVERIFY(hand().tap(text("Stick-on eyes:")));
        QVERIFY(reasonOf("All back in the box?").isEmpty());
        QVERIFY(hand().tap(text("All back in the box?")));
        QVERIFY(hand().reads(text("What did you notice?")));
    }

    void theFloorScreenSaysWhereToLookAndWhomToKeepAway()
    {
        loseTwoEyesAtLewiss();
        for (const char *words :
             {"First look at each child's hands and mouth.",
              "Look now: table, floor, clothes, dough.", "Keep Mirren away until found."})
            QVERIFY2(hand().reads(text(words)), words);
    }

    /// "Found" asks how many; one of two leaves one open, the floor check closes it.
    void foundOneThenChecked()
    {
        loseTwoEyesAtLewiss();
        QVERIFY(hand().tap(text("Stick-on eyes: 1 found")));
        QCOMPARE(inTheBox("eyes"), 4); // nothing is written before it is said
        QVERIFY(hand().tap(text("Found")));
        QCOMPARE(inTheBox("eyes"), 5);
        QVERIFY(hand().reads(text("One stick-on eye is missing.")));
        QVERIFY(hand().tap(text("Floor checked, not found")));
        QVERIFY(hand().reads(text("Play with Lewis")));
        QCOMPARE(inTheBox("eyes"), 5);
        QVERIFY(m_app->graph.household().floorSearch().missing.empty());
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY2(hand().reads(text("Floor checked, not found")),
                 qPrintable(hand().words().join(u'|')));
        QVERIFY(hand().reads(text("Catriona")));
    }

    void foundBothInOneAnswer()
    {
        loseTwoEyesAtLewiss();
        QVERIFY(hand().tap(text("Stick-on eyes: 2 found")));
        QVERIFY(hand().tap(text("Found")));
        QVERIFY(hand().reads(text("Play with Lewis")));
        QCOMPARE(inTheBox("eyes"), 6);
    }

    /// Said from Something's different, the check leads back there; and it is not asked twice.
    void aCheckBeforeTheYesIsNotAskedAgain()
    {
        countEyesHomeAtLewiss(5);
        QVERIFY(hand().tap(text("Something's different")));
        QVERIFY(hand().tap(text("Stick-on eyes: lost")));
        QVERIFY(hand().tap(text("Look for the lost piece now")));
        QVERIFY(hand().tap(text("Floor checked, not found")));
        QVERIFY(hand().tap(text("The rest is back")));
        QVERIFY2(hand().reads(text("What did you notice?")), qPrintable(hand().words().join(u'|')));
        QCOMPARE(inTheBox("eyes"), 5);
    }

    /// Two kinds of thing at once, each with its own number.
    void severalThingsAreListedAndAnsweredTogether()
    {
        start("Fin", "Ruth", "h-fin");
        usecase::Workplace &workplace = m_app->graph.household().workplace();
        for (const char *activity : {"hidden-harbour-lights", "slow-sky-taps"}) {
            const bool balloon = QByteArray(activity) == "slow-sky-taps";
            const auto play = usecase::startPlay(workplace, {"Fin", {activity}, {}, std::nullopt});
            QVERIFY(
                usecase::putBack(
                    workplace, *play, {},
                    {{{balloon ? "balloon" : "eyes"}, box::ExceptionKind::Lost, balloon ? 1 : 3}})
                    .ok());
        }
        m_app->graph.household().announce();
        QVERIFY(hand().tap(text("A small piece may lie on the floor")));
        QVERIFY(hand().tap(text("Stick-on eyes: 2 found")));
        QVERIFY(hand().tap(text("Balloons: Every piece found")));
        QVERIFY(hand().tap(text("Found")));
        QCOMPARE(inTheBox("eyes"), 5);
        QCOMPARE(inTheBox("balloon"), 2); // in pieces: never whole again
        QVERIFY(hand().reads(text("One stick-on eye is missing.")));
    }

    /// "No questions first": one tap from the floor, and the number comes first.
    void theEmergencyWordsAreOneTapFromTheFloor()
    {
        loseTwoEyesAtLewiss();
        QVERIFY(hand().tap(text("May have swallowed it, or is choking")));
        const QStringList words = hand().words();
        const auto first = words.indexOf(words.filter(text("Call your local emergency")).value(0));
        const auto then = words.indexOf(words.filter(text("Let them go on coughing")).value(0));
        QVERIFY2(first >= 0 && then > first, qPrintable(words.join(u'|')));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().reads(text("Two stick-on eyes are missing.")));
    }

    /// Scenario 2: no other control but the two answers, and the way to the emergency words.
    /// job.md scenario 2: "No other control except".
    void aBurstOffersTwoAnswersAndNothingElse()
    {
        burst();
        QVERIFY(hand().reads(text("Pick up every piece now.")));
        QVERIFY(hand().reads(text("Keep them from small children.")));
        const QStringList names = hand().names();
        QCOMPARE(names, (QStringList{text("All pieces found"), text("Can't find a piece")}));
    }

    void allPiecesFoundLeavesTwoBalloons()
    {
        burst();
        QVERIFY(hand().tap(text("All pieces found")));
        QCOMPARE(inTheBox("balloon"), 2);
        QVERIFY(hand().tap(text("All back in the box")));
        QVERIFY(hand().tap(text("Done")));
        QVERIFY(hand().find(text("A small piece may lie")) == nullptr);
        QVERIFY2(aSeatedOfferStands(), qPrintable(hand().words().join(u'|')));
        QVERIFY(hand().tap(text("Everything")));
        const QString line = hand().names().filter(text("Quiet-Roll Buoy")).value(0);
        QVERIFY2(!line.contains(text("floor")), qPrintable(line));
    }

    /// "Can't find" leads straight to the floor, which speaks of a balloon's pieces.
    void aMissingPieceIsLookedForAndBalloonsStayAway()
    {
        burst();
        QVERIFY(hand().tap(text("Can't find a piece")));
        QVERIFY(hand().reads(text("Pieces of a balloon are missing.")));
        QCOMPARE(inTheBox("balloon"), 2);
        const auto refused = [this] {
            const auto menu = m_app->graph.sitting().menu();
            return std::none_of(menu->gated.admitted.begin(), menu->gated.admitted.end(),
                                [](const auto &admitted) {
                                    return admitted.cautions().has(catalogue::Tag::Balloon);
                                });
        };
        QVERIFY(refused());
        QVERIFY(hand().tap(text("Floor checked, not found")));
        QVERIFY(!refused());
        QVERIFY(hand().tap(text("All back in the box")));
        QCOMPARE(inTheBox("balloon"), 2);
    }

    /// EM-01 to EM-04 from Play and from Put back: the number first, then each row's words.
    void somethingIsWrongCanBeSaidFromPlayAndPutBack()
    {
        start("Fin", "Ruth", "h-fin");
        saidWhoIsHere();
        begin("Hidden Harbour Lights");
        QVERIFY(hand().tap(text("Something is wrong")));
        QVERIFY(hand().reads(text("Call your local emergency number.")));
        QVERIFY(hand().tap(text("Something was swallowed")));
        QVERIFY(hand().reads(text("A coin may be a button battery")));
        QVERIFY(hand().tap(text("Trouble breathing")));
        QVERIFY(hand().reads(text("emergency number now")));
        QVERIFY(hand().tap(text("Something splashed in an eye")));
        QVERIFY(hand().reads(text("lukewarm water")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("Something is wrong")));
        QVERIFY(hand().reads(text("Call your local emergency number.")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().reads(text("Everything home")));
    }

    /// EM-05: the family's own numbers stand in the first line and are dialled; no other is shown.
    void theFamilysNumbersAreShownAndDialled()
    {
        start("Fin", "Ruth", "h-fin");
        openHomeSheet();
        QVERIFY(hand().write(text("Emergency number"), text("112")));
        QVERIFY(hand().tap(text("Keep this number: Emergency number")));
        QVERIFY(hand().write(text("Poison line"), text("+44 20-7946 0")));
        QVERIFY(hand().tap(text("Keep this number: Poison line")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Today")));
        begin("Torn-Paper Coast");
        QVERIFY(hand().tap(text("Something is wrong")));
        QVERIFY(hand().reads(text("Call your local emergency number: 112.")));
        const Dialler dialler;
        QVERIFY(hand().tap(text("Call 112")));
        QCOMPARE(dialler.asked, QUrl(text("tel:112")));
        QVERIFY(hand().tap(text("Call the poison line")));
        QCOMPARE(dialler.asked, QUrl(text("tel:+442079460")));
    }

    void aNumberThatIsNoneIsRefusedByName()
    {
        start("Fin", "Ruth", "h-fin");
        openHomeSheet();
        QVERIFY(hand().write(text("Poison line"), text("ask Ruth")));
        QVERIFY(hand().tap(text("Keep this number: Poison line")));
        QVERIFY2(hand().reads(text("poison line: only digits, spaces")),
                 qPrintable(hand().words().join(u'|')));
        QVERIFY(m_app->graph.household().family()->sheet->poisonLine.empty());
    }

    /// Scenario 3: from the answer straight to the list; Today and Box say so until all is out.
    void anAllergyLeadsToTheListAtOnceAndUntilAllIsOut()
    {
        start("Anya", "Marta", "h-anya");
        openHomeSheet();
        QVERIFY(hand().tap(text("Yes: Must anyone here avoid latex")));
        QVERIFY(hand().reads(text("This is a latex-free home now.")));
        QVERIFY(hand().reads(text("then wash hands")));
        QVERIFY(hand().reads(text("Trouble breathing, swelling, fainting: emergency number now.")));
        QVERIFY(hand().reads(text("silicone loops, asked for")));
        QVERIFY(hand().reads(text("latex-free only"))); // the long band, by its own file
        QVERIFY(hand().reads(text("in one piece")));    // the dropper, by its own file
        QVERIFY(hand().reads(text("Marta said so: today")));
        QVERIFY(hand().tap(text("Rubber bands: Taken out")));
        QCOMPARE(inTheBox("bands"), 0);
        QVERIFY(hand().tap(text("The rest later")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Box")));
        QVERIFY(hand().find(text("Some things must leave the house")) != nullptr);
        QVERIFY(hand().tap(text("Today")));
        QVERIFY(hand().tap(text("Some things must leave the house")));
        QVERIFY(hand().tap(text("Slit ball: Taken out")));
        QVERIFY(hand().tap(text("Balloons: Taken out")));
        QVERIFY(hand().tap(text("Done")));
        QVERIFY(hand().find(text("Some things must leave the house")) == nullptr);
        QVERIFY(hand().find(text("A small piece may lie")) == nullptr); // out is not lost
    }

    void wheatLeadsToTheSameList()
    {
        start("Fin", "Ruth", "h-fin");
        openHomeSheet();
        QVERIFY(hand().tap(text("Yes: Does anyone here have coeliac disease")));
        QVERIFY(hand().reads(text("wash hands and wipe the table")));
        QVERIFY(hand().tap(text("Dough: Taken out")));
        QCOMPARE(inTheBox("dough"), 0);
        QVERIFY(hand().find(text("Done")) != nullptr);
    }
};

QTEST_MAIN(TestSafetyOnScreen)
#include "tst_safety_on_screen.moc"
