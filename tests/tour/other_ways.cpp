#include "tests/tour/other_ways.h"

#include "tests/tour/more_ways.h"

#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>

#include "mobile/bridge/appearance.h"

#include <functional>

namespace lidlark::test {

namespace {

/// One start of the app after another, in one account.
class Ways
{
public:
    Ways(const QDir &folder, const PhoneInHand &phone) : m_folder(folder), m_phone(phone) {}

    /// Starts the app on a store of the folder and walks; later starts are left out once one
    /// failed.
    void start(const char *store, const char *clock, const std::function<void(Account &)> &walk)
    {
        if (!m_evening.failed.isEmpty())
            return;
        mobile::Graph graph(startOn(m_phone, m_folder.filePath(QString::fromUtf8(store)),
                                    QString::fromUtf8(clock)));
        if (m_phone.rightToLeft)
            QGuiApplication::setLayoutDirection(Qt::RightToLeft);
        if (!graph.show()) {
            m_evening.failed = QStringLiteral("The window could not be made.");
            return;
        }
        auto *window = qobject_cast<QQuickWindow *>(graph.engine().rootObjects().constFirst());
        window->resize(m_phone.size);
        Hand::settle(700);
        graph.appearance().setLeftHanded(m_phone.leftHanded);
        Account account(m_folder, window, m_phone.checks, m_pictures);
        walk(account);
        m_pictures = account.pictures();
        m_evening.text += account.text();
        m_evening.failed = account.failed();
        m_evening.findings += account.findings();
    }

    [[nodiscard]] const Evening &evening() const { return m_evening; }

private:
    QDir m_folder;
    PhoneInHand m_phone;
    Evening m_evening;
    int m_pictures = 0;
};

void setUpHome(Account &account)
{
    account.show("welcome-child", "First run: whose box is it?");
    (void)account.hand().write(QStringLiteral("Whose box is it"), QStringLiteral("Kit"));
    account.tap("4", "welcome-age", "Four years old.");
    account.tap("Go on", "welcome-home", "Who else is at home?");
    (void)account.hand().write(QStringLiteral("What are you called"), QStringLiteral("Ada"));
    account.tap("Go on", "welcome-away", "What must stay away?");
    account.tap("Go on", "welcome-box", "What lies in the box?");
    account.tap("Begin", "welcome-today", "Three offers for a new home.");
}

void showClouds(Account &account)
{
    account.tap("Kite: not asked", "kite", "The phone goes to Fin.");
    account.pass("Clouds");
    Hand::settle(700);
    account.hold("adult: hold", "together", "Calm first, before anything is offered.");
    for (int card = 0; card < 3; ++card)
        account.pass("And then?");
    account.show("small-skill", "The fourth card of five.");
    account.tap("Four kite breaths", "breaths", "Breathing beside the child, with a guide.");
    account.tap("Stop here", "together-again", "One tap ends them; once is enough.");
    account.tap("Choose something", "today-clouds", "Then the menu, easy to start with.");
}

void askForAGrownUp(Account &account)
{
    account.pass("Clouds");
    account.tap("I need a grown-up", "grown-up", "Play can wait.");
    account.hold("adult: hold", "after-grown-up", "Back with Ruth.");
}

void burstABalloon(Account &account)
{
    account.pass("Everything");
    account.tap("Slow-Sky Taps", "balloon", "The balloon's own caution.");
    account.tap("It burst", "burst", "Every piece, before anything else.");
    account.tap("Can't find a piece", "burst-missing", "A piece is missing: look on the floor.");
    account.tap("Balloons: Every piece found", "burst-found", "Every piece turned up after all.");
    account.tap("Found", "after-burst", "The burst balloon is not waited for.");
    account.tap("Something is wrong", "wrong", "Nothing is asked before the number.");
    account.tap("Something was swallowed", "wrong-swallowed", "What to do about that.");
    account.pass("Back");
}

/// Anya's home, where Bartek must avoid latex (job.md scenario 3).
void clearTheHouseOfLatex(Account &account)
{
    account.pass("Crew");
    account.pass("Home sheet");
    account.tap("Yes: Must anyone here avoid latex", "take-out", "At once: what must leave.");
    account.tap("Rubber bands: Taken out", "take-out-one", "One is out of the house.");
    account.tap("The rest later", "take-out-sheet", "Back on the home sheet.");
    account.pass("Back");
    account.tap("Today", "take-out-today", "Not all is out: Today says so.");
    account.tap("Some things must leave", "take-out-rest", "The list again.");
    account.tap("Slit ball: Taken out", "take-out-ball", "Two are out.");
    account.tap("Balloons: Taken out", "take-out-all", "All are out.");
    account.tap("Something is wrong", "take-out-wrong", "Breathing comes first here.");
    account.pass("Back");
    account.pass("Done");
    account.tap("Box", "take-out-box", "Taken out, and asked for.");
    account.tap("Notebook", "take-out-notebook", "Who took what out.");
}

void writeNumbersDown(Account &account)
{
    account.pass("Crew");
    account.pass("Home sheet");
    (void)account.hand().write(QStringLiteral("Emergency number"), QStringLiteral("112"));
    account.tap("Keep this number: Emergency", "number-kept", "The family's own number.");
    (void)account.hand().write(QStringLiteral("Poison line"), QStringLiteral("x1"));
    account.tap("Keep this number: Poison", "number-refused", "A number that is none.");
    account.pass("Back");
    account.pass("Today");
    account.pass("Everything");
    account.tap("Torn-Paper Coast", "play-wrong", "The way to the words for an emergency.");
    account.tap("Something is wrong", "wrong-number", "The number stands in the first line.");
}

/// Lewis and his mother, Mirren asleep (job.md scenario 5).
void loseASmallPart(Account &account)
{
    account.pass("Who is here");
    account.pass("Nobody else");
    account.pass("Right beside");
    account.pass("That's");
    account.pass("Everything");
    account.pass("Hidden Harbour Lights");
    account.tap("Stop here", "count-first", "Small parts are counted home first.");
    for (int eye = 0; eye < 4; ++eye)
        account.pass("Stick-on eyes:");
    account.pass("Something's different");
    account.pass("Stick-on eyes: lost");
    account.tap("2", "lost-two", "Two eyes lost.");
    account.tap("The rest is back", "floor", "A toddler lives here: look now.");
    account.tap("May have swallowed", "emergency", "Words for an emergency.");
    account.pass("Back");
    account.tap("Stick-on eyes: 1 found", "floor-found", "One of two turned up.");
    account.tap("Found", "floor-one-left", "One is still missing.");
    account.tap("Floor checked", "after-floor", "Not found: small things stay away.");
}

void planTheWeek(Account &account)
{
    account.tap("The week ahead", "week", "Seven days, one small thing each.");
    account.tap("Wednesday", "week-day", "Ways to change a day.");
    account.pass("Another one");
    account.tap("Thursday", "week-free", "One day kept by hand.");
    account.pass("Leave it free");
    account.pass("Today: ");
    account.tap("Keep it here", "week-kept", "Kept, free, and planned around.");
    account.tap("Back to today", "week-today", "What is kept for today stands first.");
    account.tap("Cup Telegraph", "graded-play", "The play, as it is written.");
    account.tap("Easier", "graded-easier", "Played easier.");
}

/// Nuala's dough has dried out (job.md scenario 4), and the box is tended.
void tendTheBox(Account &account)
{
    account.pass("Box");
    account.tap("dough, 1", "item", "One item: what needs a look, what may be noted.");
    account.tap("Opened: a week ago", "item-opened", "The day it was opened.");
    account.pass("Back");
    account.tap("pegs, 6", "item-pegs", "An item that keeps.");
    account.pass("Something is gone");
    account.pass("What became of it?: broken");
    account.tap("Note it", "item-gone", "Noted outside a play; the chart of use.");
    account.tap("It was in a mouth", "item-mouthed", "Set aside, washed, dried.");
    account.pass("Back");
    account.pass("Today");
    account.pass("Everything");
    account.pass("Crumb Counter");
    account.pass("Stop here");
    account.tap("Something's different", "different-dough", "Left open, and in a mouth, besides.");
    account.tap("Dough: dried out", "dried-out", "Rescue it, or throw it away.");
    account.tap("Try to rescue it", "rescue", "How.");
    account.tap("Still hard", "thrown-away", "Offers without dough, at once.");
    account.tap("Box", "box-asked", "Asked for, to be washed, low.");
    account.tap("What to ask for", "requests", "What is asked for, and how far it has come.");
    account.tap("Dough: It has come", "requests-come", "Counted in.");
    account.pass("Back");
    account.pass("Count it all");
    if (account.hand().find(QStringLiteral("One by one")) != nullptr) {
        account.pass("One by one");
        account.pass("One more:");
        account.tap("Next", "count-one", "One thing after the other, with the child.");
        account.pass("Back");
        account.pass("Count it all");
    }
    account.pass("One less: pom-poms");
    account.tap("That's what is here", "count-result", "What differs, plainly.");
}

/// A slip of the finger, and second thoughts about it; a family's own way, and a note to oneself.
void takeBackAndWriteDown(Account &account)
{
    account.pass("Box");
    account.pass("pegs, 6");
    account.pass("Something is gone");
    account.pass("What became of it?: lost");
    account.tap("Note it", "just-noted", "Noted at once, with its way back.");
    account.tap("Take back: 1 peg lost", "just-taken-back", "Taken back.");
    account.pass("Back");
    account.tap("Noted today", "noted-today", "What was noted, by whom and when.");
    account.tap("Put it in again: 1 peg lost", "noted-again", "And in again.");
    account.pass("Back");
    account.pass("Notebook");
    account.pass("Notes of your own");
    (void)account.hand().write(QStringLiteral("A note for yourself"),
                               QStringLiteral("Ask about left-handed scissors"));
    account.pass("Keep this note");
    account.tap("Send to the therapist", "own-notes", "One's own notes, and one that may leave.");
    account.pass("Back");
    account.pass("Today");
    account.pass("Everything");
    account.pass("Torn-Paper Coast");
    account.tap("Write down your own way", "our-way-field", "One line, kept by this home.");
    (void)account.hand().write(QStringLiteral("Our way, in one line"),
                               QStringLiteral("With old newspaper, on the ferry"));
    account.tap("Keep our way", "our-way", "The family's own way.");
}

void beginAndDie(Account &account)
{
    account.pass("Everything");
    account.tap("Torn-Paper Coast", "died-in", "Then the battery is empty.");
}

void comeBack(Account &account)
{
    account.show("resume", "The next day: one question.");
    account.tap("We stopped early", "after-resume", "Today.");
}

} // namespace

Evening walkOtherWays(const QDir &folder, const PhoneInHand &phone)
{
    QProcess::execute(QStringLiteral(LIDLARK_CLI),
                      {QStringLiteral("demo"), folder.filePath(QStringLiteral("island"))});
    Ways ways(folder, phone);
    constexpr const char *evening = "2027-01-11T18:25:00Z";
    ways.start("new-home.lidlark", evening, setUpHome);
    ways.start("island/fin-ruth.lidlark", evening, showClouds);
    ways.start("island/fin-ruth.lidlark", evening, askForAGrownUp);
    ways.start("island/fin-ruth.lidlark", evening, burstABalloon);
    ways.start("island/rory-struan.lidlark", evening, writeNumbersDown);
    ways.start("island/anya-marta.lidlark", evening, clearTheHouseOfLatex);
    ways.start("island/lewis-catriona.lidlark", evening, loseASmallPart);
    ways.start("island/skye-lorna.lidlark", evening, planTheWeek);
    ways.start("island/nuala-shona.lidlark", evening, tendTheBox);
    ways.start("island/skye-grandad.lidlark", evening, findAThing);
    ways.start("island/mairead-peigi.lidlark", evening, setAReminder);
    layOutFamilies(QDir(folder.filePath(QStringLiteral("island"))),
                   QStringLiteral("mairead-peigi.lidlark"));
    ways.start("island/mairead-peigi.lidlark", evening, walkSeveralFamilies);
    ways.start("island/zoya-sana.lidlark", evening, takeBackAndWriteDown);
    ways.start("island/oona-eoin.lidlark", evening, beginAndDie);
    ways.start("island/oona-eoin.lidlark", "2027-01-12T09:00:00Z", comeBack);
    return ways.evening();
}

} // namespace lidlark::test
