#include "tests/tour/every_page.h"

#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>

#include "mobile/bridge/play_in_hand.h"
#include "mobile/bridge/sitting.h"

#include <algorithm>

namespace lidlark::test {

namespace {

/// The pages before, during and after a play, by their routes (mobile/app/AppScreens.qml).
constexpr const char *beforePlay[] = {"today",      "room", "kite",     "guess",    "choose",
                                      "everything", "week", "grown-up", "together", "breaths"};
constexpr const char *duringPlay[] = {"play",      "burst",   "putback",
                                      "different", "noticed", "kite-after"};
constexpr const char *afterPlay[] = {"box",      "count",     "item",   "requests",     "dried-out",
                                     "notebook", "crew",      "floor",  "home-sheet",   "take-out",
                                     "settings", "emergency", "let-in", "shared-place", "sees",
                                     "about-me", "hand-over", "join"};

void open(Account &account, QObject *screens, const char *route)
{
    QMetaObject::invokeMethod(screens, "go", Q_ARG(QString, QString::fromLatin1(route)));
    Hand::settle(250);
    account.show(route, "");
}

/// The first entry that goes out of the box and has something to say about a swap.
bool beginSomething(mobile::Graph &graph)
{
    const auto menu = graph.sitting().menu();
    if (!menu || menu->gated.admitted.empty())
        return false;
    const auto &admitted = menu->gated.admitted;
    const auto rich = std::ranges::find_if(admitted, [](const safety::Admitted &one) {
        return one.activity().usesBox() && !one.activity().swaps.empty();
    });
    return graph.playInHand().begin(rich != admitted.end() ? *rich : admitted.front());
}

} // namespace

Evening openEveryPage(const QDir &folder, const PhoneInHand &phone)
{
    QProcess::execute(QStringLiteral(LIDLARK_CLI),
                      {QStringLiteral("demo"), folder.filePath(QStringLiteral("island"))});
    mobile::Graph graph(startOn(phone, folder.filePath(QStringLiteral("island/zoya-sana.lidlark")),
                                QStringLiteral("2027-01-11T18:25:00Z")));
    if (!graph.show())
        return {{}, QStringLiteral("The window could not be made."), {}};
    auto *window = qobject_cast<QQuickWindow *>(graph.engine().rootObjects().constFirst());
    window->resize(phone.size);
    auto *screens = window->findChild<QObject *>(QStringLiteral("screens"));
    screens->setProperty("item", QStringLiteral("dough"));
    Account account(folder, window, phone.checks);
    Hand::settle(400);
    for (const char *route : beforePlay)
        open(account, screens, route);
    if (!beginSomething(graph))
        return {{}, QStringLiteral("Nothing can be played."), {}};
    for (const char *route : duringPlay)
        open(account, screens, route);
    (void)graph.playInHand().stop();
    for (const char *route : afterPlay)
        open(account, screens, route);
    return {account.text(), account.failed(), account.findings()};
}

} // namespace lidlark::test
