#include "tests/tour/evening.h"

#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>

#include "core/base/instant.h"
#include "mobile/bridge/appearance.h"

namespace lidlark::test {

namespace {

QString ask(const QStringList &arguments)
{
    QProcess cli;
    cli.start(QStringLiteral(LIDLARK_CLI), arguments);
    cli.waitForFinished();
    return QString::fromUtf8(cli.readAllStandardOutput());
}

void walkToTheChoice(Account &account)
{
    Hand::settle(700);
    account.show("today", "Today: three offers for a tired Monday evening.");
    account.tap("Who is here", "room", "Who is here.");
    account.tap("Nobody else", "room-nobody-else", "Only Fin and Ruth.");
    account.tap("That's", "today-room", "Back on Today.");
    account.tap("Kite: not asked", "kite", "The phone goes to Fin.");
    account.tap("Flying steady", "kite-thanks", "Fin taps his kite; the thanks.");
    Hand::settle(700);
    account.hold("adult: hold", "today-steady", "The menu follows the kite.");
    account.tap("Fin chooses", "choose", "Three pictures, no words.");
    account.hold("adult: hold", "today-chosen", "Back with Ruth.");
    account.tap("Everything", "everything", "The whole list, with reasons.");
}

void playHiddenLights(Account &account)
{
    account.tap("Hidden Harbour Lights", "play-1", "Cautions first, step one.");
    account.tap("Next step", "play-2", "Step two.");
    account.tap("Next step", "play-3", "Step three.");
    for (int i = 0; i < 3 && account.hand().find(QStringLiteral("Put back")) == nullptr; ++i)
        account.pass("Next step");
    account.tap("Put back", "putback", "The tray, all places empty.");
    for (int i = 0; i < 5; ++i)
        account.pass("Stick-on eyes");
    account.tap("Dough", "putback-tray", "Five eyes and the dough are home.");
    account.tap("Something's different", "different", "What went out.");
    account.tap("Stick-on eyes: used up", "different-used-up",
                "A word and a number, kept at once.");
    account.tap("The rest is back", "noticed", "What did you notice?");
    account.tap("Found own way", "noticed-phrase", "One everyday phrase.");
    account.tap("Done", "today-after", "Today again.");
}

void walkTheRest(Account &account)
{
    account.tap("Box", "box", "The box as it is now.");
    account.tap("Count it all", "count", "A full count, with the child.");
    account.pass("Back");
    account.tap("Notebook", "notebook", "Written down by itself.");
    account.tap("Crew", "crew", "On this phone only.");
    account.tap("Home sheet", "home-sheet", "Who lives here, what must stay away.");
    account.pass("Back");
    account.tap("Settings", "settings", "Text size, light and dark.");
}

/// @returns what the store should have told and did not; empty: it tells the evening.
QString readTheStore(Account &account, const QString &store, const QString &clock)
{
    const QStringList options{QStringLiteral("--store"), store, QStringLiteral("--clock"), clock,
                              QStringLiteral("--json")};
    const QString box = ask(QStringList{QStringLiteral("box")} + options);
    const QString verified = ask(QStringList{QStringLiteral("verify")} + options);
    account.add(box);
    account.add(verified);
    const bool told = box.contains(QStringLiteral(
                          R"("id":"eyes","name":"stick-on eyes","expected":6,"low":5)")) &&
                      verified.contains(QStringLiteral(R"("projections_match":true)"));
    return told ? QString()
                : QStringLiteral("The store does not tell the evening that was tapped.");
}

} // namespace

mobile::StartOptions startOn(const PhoneInHand &phone, const QString &store, const QString &clock)
{
    mobile::StartOptions options;
    options.store = store;
    options.fromMs = msFromText(clock.toStdString());
    options.textScale = phone.textScale;
    options.scheme = phone.scheme;
    options.reducedMotion = phone.reducedMotion;
    // The people of the demo read their own languages; the tour taps by English names.
    options.language = phone.language.isEmpty() ? QStringLiteral("en") : phone.language;
    return options;
}

Evening walkAnEvening(const QDir &folder, const PhoneInHand &phone)
{
    const QString clock = QStringLiteral("2027-01-11T18:25:00Z");
    ask({QStringLiteral("demo"), folder.filePath(QStringLiteral("island"))});
    const QString store = folder.filePath(QStringLiteral("island/fin-ruth.lidlark"));

    mobile::Graph graph(startOn(phone, store, clock));
    if (phone.rightToLeft)
        QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    if (!graph.show())
        return {{}, QStringLiteral("The window could not be made."), {}};
    auto *window = qobject_cast<QQuickWindow *>(graph.engine().rootObjects().constFirst());
    window->resize(phone.size);

    graph.appearance().setLeftHanded(phone.leftHanded);
    Account account(folder, window, phone.checks);
    account.add(QStringLiteral("An evening with Fin, tapped on the real screens.\n"));
    walkToTheChoice(account);
    playHiddenLights(account);
    walkTheRest(account);
    QString failed = account.failed();
    const QString untold = readTheStore(account, store, clock);
    if (failed.isEmpty())
        failed = untold;
    return {account.text(), failed, account.findings()};
}

} // namespace lidlark::test
