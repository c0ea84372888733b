#pragma once

#include <QDir>
#include <QTemporaryDir>
#include <QtTest>

#include "core/store/event_repository.h"
#include "tests/tour/open_app.h"

namespace lidlark::test {

/// Every row of every table of a store, as one text.
inline QString everythingIn(const QString &file)
{
    auto database = store::Database::openExisting(file.toStdString());
    QString all;
    QStringList tables;
    auto names = database->prepare("SELECT name FROM sqlite_schema WHERE type = 'table'");
    for (auto row = names->step(); row && *row; row = names->step())
        tables.append(QString::fromStdString(names->text(0)));
    for (const QString &table : std::as_const(tables)) {
        auto query = database->prepare("SELECT * FROM \"" + table.toStdString() + "\"");
        for (auto row = query->step(); row && *row; row = query->step()) {
            for (int column = 0; column < query->columns(); ++column)
                all += QString::fromStdString(query->text(column)) + u' ';
            all += u'\n';
        }
    }
    return all;
}

/// The events of a store, lane by lane.
inline std::vector<journal::Event> eventsIn(const QString &file)
{
    auto database = store::Database::openExisting(file.toStdString());
    return *store::EventRepository(*database).all();
}

inline int playsIn(const QString &file)
{
    const auto events = eventsIn(file);
    return static_cast<int>(std::ranges::count_if(events, [](const journal::Event &event) {
        return event.kind == journal::Kind::PlayStarted;
    }));
}

/// A childminder's phone: Fin's family first, then Anya's, whose brother must avoid latex, and
/// Lewis's, whose sister is two. What the tests of several families stand on.
class Childminder : public QObject
{
    Q_OBJECT

protected:
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_fin;
    QString m_anya;
    QString m_lewis;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void open(const char *clock = mondayEvening)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(m_fin, clock);
    }
    void closeApp() { m_app.reset(); }
    void look(const char *alias)
    {
        QVERIFY2(hand().tap(text(alias) + text("'s box")), page().constData());
    }
    /// "Bartek: latex" on Anya's home sheet.
    void bartekMustAvoidLatex()
    {
        open();
        look("Anya");
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Home sheet")));
        QVERIFY(hand().tap(text("Yes: Must anyone here avoid latex")));
        closeApp();
    }
    void nobodyElseIsHere()
    {
        QVERIFY2(hand().tap(text("Who is here")), page().constData());
        QVERIFY(hand().tap(text("Nobody else")));
        QVERIFY(hand().tap(text("Right beside")));
        QVERIFY(hand().tap(text("That's")));
    }
    void begin(const char *activity)
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(hand().tap(text(activity)), page().constData());
        QVERIFY(m_app->graph.playInHand().active());
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
    [[nodiscard]] QString whosePage() const
    {
        const auto *strip = m_app->window->findChild<QQuickItem *>(text("whosePage"));
        return strip != nullptr && strip->isVisible() ? strip->property("text").toString()
                                                      : QString();
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_fin = m_folder->filePath(text("home.lidlark"));
        m_anya = m_fin + text(".families/family-2.lidlark");
        m_lewis = m_fin + text(".families/family-3.lidlark");
        QVERIFY(QDir().mkpath(m_fin + text(".families")));
        writeStore(m_fin, "Fin", "Ruth", "h-fin");
        writeStore(m_anya, "Anya", "Marta", "h-anya");
        writeStore(m_lewis, "Lewis", "Catriona", "h-lewis");
    }
    void cleanup() { m_app.reset(); }
};

} // namespace lidlark::test
