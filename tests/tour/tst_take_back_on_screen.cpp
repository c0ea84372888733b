#include <QtTest>

#include <QDirIterator>
#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards design.md 10 on the real screens: nothing is asked before a tap counts, and within the
/// day everything that was tapped can be taken back; and job.md F12 and G9.
class TestTakeBackOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QString path(const char *name) const { return m_folder.filePath(text(name)); }
    QString newStore(const char *name, const std::string &child, const std::string &person,
                     const std::string &home) const
    {
        writeStore(path(name), child, person, home);
        return path(name);
    }
    void open(const QString &file, const char *clock)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(file, clock);
    }
    [[nodiscard]] store::ItemRow item(const char *id) const
    {
        const auto found = m_app->graph.household().boxItem({id});
        return found ? found->row : store::ItemRow{};
    }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void tap(const char *name)
    {
        QVERIFY2(hand().tap(text(name)), (QByteArray(name) + ": " + page()).constData());
    }
    void loseAPeg()
    {
        tap("Box");
        tap("pegs, 6");
        tap("Something is gone");
        tap("What became of it?: lost");
        tap("Note it");
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void cleanup() { m_app.reset(); }

    /// A slip of the finger: the slip of paper says what was noted, and takes it back.
    void justNotedAndTakenBack()
    {
        open(newStore("slip", "Fin", "Ruth", "h-fin"), mondayEvening);
        loseAPeg();
        QCOMPARE(item("pegs").low, 5);
        QVERIFY2(hand().reads(text("1 peg lost")), page().constData());
        tap("Take back: 1 peg lost");
        QCOMPARE(item("pegs").low, 6);
        QVERIFY2(hand().reads(text("Taken back: 1 peg lost")), page().constData());
        tap("Put it in again: 1 peg lost");
        QCOMPARE(item("pegs").low, 5);
    }

    /// It covers nothing: the page ends where the slip begins.
    void theSlipCoversNoControl()
    {
        open(newStore("room", "Fin", "Ruth", "h-fin"), mondayEvening);
        const auto *screens = m_app->window->findChild<QQuickItem *>(QStringLiteral("screens"));
        const auto *slip = m_app->window->findChild<QQuickItem *>(QStringLiteral("justNoted"));
        QVERIFY(screens != nullptr && slip != nullptr);
        QCOMPARE(slip->height(), 0.0);
        loseAPeg();
        QVERIFY(slip->height() >= 48.0);
        const auto *current = screens->property("current").value<QQuickItem *>();
        QVERIFY(current != nullptr);
        const double pageEnds = current->mapToItem(screens, {0, current->height()}).y();
        QVERIFY(pageEnds <= slip->mapToItem(screens, {0, 0}).y());
    }

    /// No timer: it waits for the reader, and goes with the next tap elsewhere.
    void theSlipGoesWithTheNextTapElsewhere()
    {
        open(newStore("elsewhere", "Fin", "Ruth", "h-fin"), mondayEvening);
        loseAPeg();
        Hand::settle(3000);
        QVERIFY(hand().find(text("Take back: 1 peg lost")) != nullptr);
        QTest::mouseClick(m_app->window, Qt::LeftButton, {}, QPoint(180, 60)); // the title
        Hand::settle();
        QVERIFY2(hand().find(text("Take back: 1 peg lost")) == nullptr, page().constData());
        QCOMPARE(item("pegs").low, 5);
    }

    /// The page after the next shows it no more, however it was gone to.
    void theSlipStaysForOnePage()
    {
        open(newStore("pages", "Fin", "Ruth", "h-fin"), mondayEvening);
        loseAPeg();
        auto *screens = m_app->window->findChild<QQuickItem *>(QStringLiteral("screens"));
        QMetaObject::invokeMethod(screens, "goBack");
        Hand::settle();
        QVERIFY2(hand().find(text("Take back: 1 peg lost")) != nullptr, page().constData());
        QMetaObject::invokeMethod(screens, "goBack");
        Hand::settle();
        QVERIFY(hand().find(text("Take back: 1 peg lost")) == nullptr);
    }

    /// "2 pegs lost, Ruth, 18:25", newest first, from Box and from Notebook.
    void notedTodayListsWhatWhoAndWhen()
    {
        open(newStore("list", "Fin", "Ruth", "h-fin"), mondayEvening);
        loseAPeg();
        tap("Back");
        tap("Noted today");
        QVERIFY2(hand().reads(text("1 peg lost")), page().constData());
        QVERIFY2(hand().reads(text("Ruth, 18:25")), page().constData());
        tap("Take back: 1 peg lost");
        QCOMPARE(item("pegs").low, 6);
        QVERIFY2(hand().reads(text("Taken back")), page().constData());
        tap("Put it in again: 1 peg lost");
        QCOMPARE(item("pegs").low, 5);
        tap("Back");
        tap("Notebook");
        tap("Noted today");
        tap("Take back: 1 peg lost");
        tap("Back");
        QVERIFY2(!hand().reads(text("Lost")),
                 page().constData()); // the notebook tells of it no more
    }

    /// "All back" with a piece still on the table: the play asks again.
    void allBackTakenBackAsksAgain()
    {
        open(newStore("reopen", "Fin", "Ruth", "h-fin"), mondayEvening);
        tap("Everything");
        tap("Torn-Paper Coast");
        tap("Stop here");
        tap("Done"); // nothing of the box was used
        QVERIFY(!m_app->graph.playInHand().active());
        tap("Take back: Torn-Paper Coast: all back");
        QVERIFY(m_app->graph.playInHand().active());
        QVERIFY2(hand().find(text("Done")) != nullptr, page().constData());
        tap("Put it in again: Torn-Paper Coast: all back");
        QVERIFY(!m_app->graph.playInHand().active());
        QVERIFY2(hand().reads(text("Play with Fin")), page().constData());
    }

    /// events.md 8.2 on the sheet: "yes" by mistake is corrected by who said it.
    void anAnswerOfTheHomeSheetIsTakenBack()
    {
        open(newStore("sheet", "Fin", "Ruth", "h-fin"), mondayEvening);
        tap("Crew");
        tap("Home sheet");
        tap("Yes: Is there a dog or a cat");
        QVERIFY(m_app->graph.household().family()->sheet->pets);
        tap("Take back: Home sheet: a dog or a cat here");
        QVERIFY(!m_app->graph.household().family()->sheet->pets);
    }

    void aChildsViewTellsOfNothing()
    {
        open(newStore("child", "Fin", "Ruth", "h-fin"), mondayEvening);
        loseAPeg();
        auto *screens = m_app->window->findChild<QQuickItem *>(QStringLiteral("screens"));
        QMetaObject::invokeMethod(screens, "go", Q_ARG(QString, QStringLiteral("kite")));
        Hand::settle();
        QVERIFY2(hand().find(text("Take back")) == nullptr, page().constData());
    }

    /// job.md F12.
    void ourWayIsKeptShownAndTakenOff()
    {
        const QString file = newStore("way", "Fin", "Ruth", "h-fin");
        open(file, mondayEvening);
        tap("Everything");
        tap("Torn-Paper Coast");
        tap("Write down your own way");
        QVERIFY(hand().write(text("Our way, in one line"), text("With old newspaper")));
        tap("Keep our way");
        QVERIFY2(hand().reads(text("With old newspaper")), page().constData());
        open(file, "2027-01-11T18:30:00Z"); // the play is still in hand
        QVERIFY2(hand().reads(text("With old newspaper")), page().constData());
        tap("Take it off");
        QVERIFY2(!hand().reads(text("With old newspaper")), page().constData());
    }

    /// job.md G9: private, and each sent by a choice of its own; honest about when it leaves.
    void aNoteToOneself()
    {
        open(newStore("note", "Fin", "Ruth", "h-fin"), mondayEvening);
        tap("Notebook");
        tap("Notes of your own");
        QVERIFY(hand().write(text("A note for yourself"), text("Ask about scissors")));
        tap("Keep this note");
        tap("Better in a quieter place");
        QVERIFY2(hand().reads(text("Ask about scissors")), page().constData());
        QCOMPARE(m_app->graph.household().ownNotes().size(), std::size_t{2});
        QVERIFY(!hand().reads(text("with the next exchange")));
        tap("Send to the therapist: Better in a quieter place");
        QVERIFY2(hand().reads(text("It goes to the therapist with the next exchange.")),
                 page().constData());
        QVERIFY(m_app->graph.household().ownNotes().front().sent);
        QVERIFY(!m_app->graph.household().ownNotes().back().sent);
        tap("Keep it here: Better in a quieter place");
        QVERIFY(!m_app->graph.household().ownNotes().front().sent);
        tap("Take it off: Ask about scissors");
        QCOMPARE(m_app->graph.household().ownNotes().size(), std::size_t{1});
    }

    /// design.md 10 and job.md scenario 8, trap: no screen asks whether somebody is sure.
    void noScreenAsksAreYouSure()
    {
        const QString source = qEnvironmentVariable("LIDLARK_SOURCE_DIR");
        QDirIterator files(source + QStringLiteral("/mobile"), {text("*.qml"), text("*.cpp")},
                           QDir::Files, QDirIterator::Subdirectories);
        const QRegularExpression asks(
            text("are you sure|really (delete|remove|forget)|cannot be undone"),
            QRegularExpression::CaseInsensitiveOption);
        int read = 0;
        while (files.hasNext()) {
            QFile file(files.next());
            QVERIFY(file.open(QIODevice::ReadOnly));
            const QString words = QString::fromUtf8(file.readAll());
            QVERIFY2(!asks.match(words).hasMatch(), qPrintable(file.fileName()));
            ++read;
        }
        QVERIFY(read > 100);
    }
};

QTEST_MAIN(TestTakeBackOnScreen)
#include "tst_take_back_on_screen.moc"
