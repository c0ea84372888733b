// One whole evening on the real screens: kite, menu, play, put-back with an exception, box.
//
//   lidlark-tour FOLDER    leaves NN-name.png and account.txt there

#include <QDir>
#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>
#include <QTextStream>
#include <QtQml/qqmlextensionplugin.h>

#include "core/base/instant.h"
#include "mobile/app/graph.h"

#include "tests/tour/hand.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

namespace {

using lidlark::test::Hand;

class Tour
{
public:
    Tour(QDir folder, QQuickWindow *window) : m_folder(std::move(folder)), m_hand(window) {}

    /// One tap, one picture, one line of the account.
    void tap(const QString &name, const QString &picture, const QString &line)
    {
        if (!m_failed.isEmpty())
            return;
        if (!m_hand.tap(name)) {
            m_failed = QStringLiteral("No control called \"%1\". On screen: %2")
                           .arg(name, m_hand.names().join(QStringLiteral(" | ")));
            return;
        }
        show(picture, line);
    }

    void show(const QString &picture, const QString &line)
    {
        const QString name =
            QStringLiteral("%1-%2.png").arg(++m_number, 2, 10, QLatin1Char('0')).arg(picture);
        if (!m_hand.picture(m_folder.filePath(name)))
            m_failed = QStringLiteral("Could not save %1").arg(name);
        m_account += QStringLiteral("%1  %2\n").arg(name, line);
    }

    void wait(int ms) { Hand::settle(ms); }
    void add(const QString &text) { m_account += text; }
    [[nodiscard]] QString failed() const { return m_failed; }

    bool write()
    {
        if (!m_failed.isEmpty())
            m_account += QStringLiteral("The tour stopped: %1\n").arg(m_failed);
        QFile file(m_folder.filePath(QStringLiteral("account.txt")));
        if (!file.open(QIODevice::WriteOnly))
            return false;
        file.write(m_account.toUtf8());
        QTextStream(stdout) << m_account;
        return m_failed.isEmpty();
    }

private:
    QDir m_folder;
    Hand m_hand;
    QString m_account = QStringLiteral("An evening with Fin, tapped on the real screens.\n");
    QString m_failed;
    int m_number = 0;
};

QString ask(const QStringList &arguments)
{
    QProcess cli;
    cli.start(QStringLiteral(LIDLARK_CLI), arguments);
    cli.waitForFinished();
    return QString::fromUtf8(cli.readAllStandardOutput());
}

void walkTheEvening(Tour &tour, Hand &hand)
{
    const auto text = [](const char *words) { return QString::fromUtf8(words); };
    tour.wait(800);
    tour.show(text("today"), text("Today: three offers for a tired Monday evening."));
    tour.tap(text("Who is here"), text("room"), text("Who is here."));
    tour.tap(text("Nobody else"), text("room-nobody-else"), text("Only Fin and Ruth."));
    tour.tap(text("That's"), text("today-room"), text("Back on Today."));
    tour.tap(text("Kite: not asked"), text("kite"), text("The phone goes to Fin."));
    tour.tap(text("Flying steady"), text("kite-thanks"), text("Fin taps his kite; the thanks."));
    tour.wait(800);
    hand.hold(text("adult: hold"));
    tour.show(text("today-steady"), text("The menu follows the kite."));
    tour.tap(text("Fin chooses"), text("choose"), text("Three pictures, no words."));
    tour.wait(200);
}

void playHiddenLights(Tour &tour, Hand &hand)
{
    const auto text = [](const char *words) { return QString::fromUtf8(words); };
    if (!hand.hold(text("adult: hold")))
        tour.add(text("The adult control did not answer.\n"));
    tour.tap(text("Everything"), text("everything"), text("The whole list, with reasons."));
    tour.tap(text("Hidden Harbour Lights"), text("play-1"), text("Cautions first, step one."));
    tour.tap(text("Next step"), text("play-2"), text("Step two."));
    tour.tap(text("Next step"), text("play-3"), text("Step three."));
    for (int i = 0; i < 3 && hand.find(text("Put back")) == nullptr; ++i)
        hand.tap(text("Next step"));
    tour.tap(text("Put back"), text("putback"), text("The tray, all places empty."));
    for (int i = 0; i < 5; ++i)
        hand.tap(text("Stick-on eyes"));
    tour.tap(text("Dough"), text("putback-tray"), text("Five eyes and the dough are home."));
    tour.tap(text("Something's different"), text("different"), text("What went out."));
    tour.tap(text("Stick-on eyes: used up"), text("different-used-up"),
             text("A word and a number, kept at once."));
    tour.tap(text("The rest is back"), text("noticed"), text("What did you notice?"));
    tour.tap(text("Found own way"), text("noticed-phrase"), text("One everyday phrase."));
    tour.tap(text("Done"), text("today-after"), text("Today again."));
    tour.tap(text("Box"), text("box"), text("The box as it is now."));
    tour.tap(text("Notebook"), text("notebook"), text("Written down by itself."));
    tour.tap(text("Crew"), text("crew"), text("On this phone only."));
}

} // namespace

int main(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    lidlark::test::wakeAccessibleTree();
    const QStringList arguments = QGuiApplication::arguments();
    if (arguments.size() != 2) {
        QTextStream(stderr) << "lidlark-tour FOLDER\n";
        return 2;
    }
    QDir folder(arguments[1]);
    folder.removeRecursively();
    if (!folder.mkpath(QStringLiteral("."))) {
        QTextStream(stderr) << "Cannot write to " << arguments[1] << ".\n";
        return 1;
    }
    const QString clock = QStringLiteral("2027-01-11T18:25:00Z");
    ask({QStringLiteral("demo"), folder.filePath(QStringLiteral("island"))});
    const QString store = folder.filePath(QStringLiteral("island/fin-ruth.lidlark"));

    lidlark::mobile::StartOptions options;
    options.store = store;
    options.fromMs = lidlark::msFromText(clock.toStdString());
    lidlark::mobile::Graph graph(options);
    if (!graph.show())
        return 1;
    auto *window = qobject_cast<QQuickWindow *>(graph.engine().rootObjects().constFirst());
    Tour tour(folder, window);
    Hand hand(window);
    walkTheEvening(tour, hand);
    playHiddenLights(tour, hand);

    const QStringList store_{QStringLiteral("--store"), store, QStringLiteral("--clock"), clock,
                             QStringLiteral("--json")};
    const QString box = ask(QStringList{QStringLiteral("box")} + store_);
    const QString verified = ask(QStringList{QStringLiteral("verify")} + store_);
    tour.add(box);
    tour.add(verified);
    const bool told = box.contains(QStringLiteral(
                          R"("id":"eyes","name":"stick-on eyes","expected":6,"low":5)")) &&
                      verified.contains(QStringLiteral(R"("projections_match":true)"));
    if (!told)
        tour.add(QStringLiteral("The store does not tell the evening that was tapped.\n"));
    return tour.write() && told ? 0 : 1;
}
