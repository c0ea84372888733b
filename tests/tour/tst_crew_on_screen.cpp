#include <QtTest>

#include <QDirIterator>
#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/store/event_repository.h"
#include "mobile/bridge/crew_life.h"
#include "mobile/bridge/sitting.h"
#include "tests/support/clinic.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards that two phones come to share one box through the real screens (job.md scenario 11, S7,
/// D3, D4): a code that is typed off, three words compared, and what was put back on one seen on
/// the other.
class TestCrewOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString m_place;
    std::unique_ptr<OpenApp> m_ruth;
    std::unique_ptr<OpenApp> m_other;

    static QByteArray page(const OpenApp &app) { return app.hand().words().join(u'|').toUtf8(); }
    /// What another phone or a network takes.
    static bool comes(const OpenApp &app, const char *words)
    {
        for (int waits = 0; waits < 100; ++waits) {
            if (app.hand().reads(text(words))) {
                Hand::settle(200); // and stands where it stays
                return true;
            }
            Hand::settle(100);
        }
        return false;
    }
    static bool tap(const OpenApp &app, const char *name) { return app.hand().tap(text(name)); }

    void lookAtTheCrew()
    {
        QVERIFY(tap(*m_ruth, "Crew"));
        QVERIFY(m_ruth->hand().reads(text("Nothing leaves it")));
    }
    void chooseAPlace()
    {
        QVERIFY2(m_ruth->hand().reads(text("On this phone only")), page(*m_ruth).constData());
        QVERIFY(tap(*m_ruth, "Shared place"));
        QVERIFY2(m_ruth->hand().write(text("Address of the place"), m_place),
                 page(*m_ruth).constData());
        QVERIFY(tap(*m_ruth, "Try it out"));
        QVERIFY2(comes(*m_ruth, "It works"), page(*m_ruth).constData());
    }
    void sayYes()
    {
        QVERIFY(tap(*m_ruth, "Share. "));
        QVERIFY2(m_ruth->graph.crewLife().agreed(), page(*m_ruth).constData());
    }
    /// @returns the nine words.
    [[nodiscard]] QString codeFor(const char *part)
    {
        if (!tap(*m_ruth, "Let somebody in") || !tap(*m_ruth, part) || !tap(*m_ruth, "Make a code"))
            return {};
        if (!comes(*m_ruth, "9. "))
            return {};
        QStringList words;
        for (int number = 1; number <= 9; ++number) {
            const QString mark = QString::number(number) + text(". ");
            const QStringList found = m_ruth->hand().words().filter(
                QRegularExpression(u'^' + QRegularExpression::escape(mark)));
            words.append(found.value(0).mid(mark.size()));
        }
        return words.join(u' ');
    }
    void knock(const QString &code, const char *name)
    {
        m_other = std::make_unique<OpenApp>(m_folder.filePath(text(name)), mondayEvening);
        QVERIFY2(tap(*m_other, "I have a code"), page(*m_other).constData());
        QVERIFY(m_other->hand().write(text("The nine words"), code));
        QVERIFY2(m_other->hand().reads(text("All nine words are right")),
                 page(*m_other).constData());
        QVERIFY(tap(*m_other, "Go on"));
        QVERIFY(m_other->hand().write(text("Address of the place"), m_place));
        QVERIFY(tap(*m_other, "Go on"));
        QVERIFY2(m_other->hand().write(text("What are you called here?"), text(name)),
                 page(*m_other).constData());
        QVERIFY(tap(*m_other, "Join. "));
        QVERIFY2(comes(*m_other, "Waiting to be let in"), page(*m_other).constData());
    }
    [[nodiscard]] static QString sameWords(const OpenApp &app)
    {
        const auto *words = app.window->findChild<QQuickItem *>(QStringLiteral("sameWords"));
        return words != nullptr ? words->property("text").toString() : QString();
    }
    /// @param begins what the newcomer's phone then shows.
    void letIn(const char *name, const char *begins = "Play with Fin")
    {
        QVERIFY2(comes(*m_ruth, "Somebody is here"), page(*m_ruth).constData());
        QVERIFY(m_ruth->hand().reads(text(name)));
        QVERIFY(!sameWords(*m_ruth).isEmpty());
        QCOMPARE(sameWords(*m_ruth), sameWords(*m_other));
        QVERIFY(tap(*m_ruth, "Yes, let"));
        QVERIFY2(comes(*m_ruth, " is in. "), page(*m_ruth).constData());
        QVERIFY2(comes(*m_other, "You are in"), page(*m_other).constData());
        QVERIFY(tap(*m_other, "Begin"));
        QVERIFY2(comes(*m_other, begins), page(*m_other).constData());
    }
    static void go(const OpenApp &app, const char *where)
    {
        QMetaObject::invokeMethod(app.window->findChild<QObject *>(QStringLiteral("screens")), "go",
                                  Q_ARG(QString, text(where)));
        Hand::settle();
    }
    /// A build with one box on it, and Fin's box handed over, on the therapist's phone.
    static void layTheTable(const QString &file)
    {
        auto morven = packer("Morven");
        morven->database = *store::Database::open(file.toStdString());
        (void)store::DeviceRepository(morven->database).setDevice(morven->device);
        usecase::Workplace workplace = morven->workplace();
        (void)usecase::issueBox(workplace, familyOf("Fin"));
        const Table table = tableOn(*morven);
        (void)usecase::keepBox(workplace, table.build, standardBox("K1", "Oona", table.design));
    }
    /// A box of a small design, all of it in, on the phone that was set up there.
    static void packOne(const QString &file, const char *child)
    {
        auto phone = packer("Morag");
        phone->database = *store::Database::open(file.toStdString());
        phone->device = **store::DeviceRepository(phone->database).device();
        usecase::Workplace workplace = phone->workplace();
        const Table table = tableOn(*phone);
        (void)usecase::keepBox(workplace, table.build, standardBox("K1", child, table.design));
        QVERIFY(packAll(*phone, table, "K1"));
    }
    /// As a page looks, for eyes: where a folder is named.
    static void look(const OpenApp &app, const char *name)
    {
        const QString folder = qEnvironmentVariable("LIDLARK_LOOK");
        if (!folder.isEmpty())
            QVERIFY(app.hand().picture(folder + u'/' + text(name) + text(".png")));
    }
    static void everybodyShares(OpenApp &app, const char *where = "crew")
    {
        go(app, where);
        QVERIFY2(tap(app, "Share now"), page(app).constData());
        for (int waits = 0; waits < 100 && app.graph.crewLife().busy(); ++waits)
            Hand::settle(100);
        QVERIFY2(app.graph.crewLife().troubles().isEmpty(),
                 app.graph.crewLife().troubles().join(u'|').toUtf8().constData());
    }

    static void loseOne(const OpenApp &app)
    {
        QVERIFY(tap(app, "Something is gone"));
        QVERIFY(tap(app, "What became of it?: lost"));
        QVERIFY(tap(app, "Note it"));
    }
    static void playOnce(OpenApp &app)
    {
        const auto menu = app.graph.sitting().menu();
        QVERIFY(menu && !menu->gated.admitted.empty());
        QVERIFY(app.graph.playInHand().begin(menu->gated.admitted.front()));
        QVERIFY(app.graph.playInHand().stop());
        QVERIFY(!app.graph.playInHand().active() || app.graph.playInHand().allBack());
    }
    static QStringList filesIn(const QString &folder)
    {
        QStringList files;
        for (QDirIterator each(folder, QDir::Files, QDirIterator::Subdirectories); each.hasNext();)
            files.append(each.next());
        files.sort();
        return files;
    }
    /// What lies in a phone's store that others wrote.
    static int eventsOfOthers(OpenApp &app, journal::LaneKind kind)
    {
        const auto events =
            store::EventRepository(app.graph.household().workplace().database).all();
        int found = 0;
        for (const journal::Event &event : *events) {
            if (event.lane.kind == kind && event.device != app.graph.household().device())
                ++found;
        }
        return found;
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_place = m_folder.filePath(text("place"));
        QDir(m_place).removeRecursively();
        QDir().mkpath(m_place);
        const QString ruth = m_folder.filePath(text("ruth"));
        for (const char *name : {"ruth", "Gran", "Archie", "morven", "Callum", "Morag"}) {
            for (const QString &file :
                 QDir(m_folder.path()).entryList({text(name) + u'*'}, QDir::Files))
                QFile::remove(m_folder.filePath(file));
        }
        writeStore(ruth, "Fin", "Ruth", "h-fin");
        m_ruth = std::make_unique<OpenApp>(ruth, mondayEvening);
    }
    void cleanup()
    {
        m_other.reset();
        m_ruth.reset();
    }

    void whatOnePutsBackTheOtherSees()
    {
        lookAtTheCrew();
        chooseAPlace();
        sayYes();
        const QString code = codeFor("Family or carer");
        QVERIFY2(!code.isEmpty(), page(*m_ruth).constData());
        knock(code, "Gran");
        letIn("Gran");
        QVERIFY(tap(*m_ruth, "Done"));
        QVERIFY(m_ruth->hand().reads(text("Gran")));
        go(*m_ruth, "box");
        QVERIFY2(tap(*m_ruth, "pegs, 6"), page(*m_ruth).constData());
        loseOne(*m_ruth);
        everybodyShares(*m_ruth);
        QVERIFY2(m_ruth->hand().reads(text("Shared at 18:2")), page(*m_ruth).constData());
        everybodyShares(*m_other);
        QVERIFY(m_other->hand().reads(text("Ruth")));
        go(*m_other, "box");
        QVERIFY2(comes(*m_other, "pegs, 5"), page(*m_other).constData());
    }

    /// A guest: the box and today's offers, and no goals, no kites, no plays of others (job.md
    /// scenario 11).
    void aGuestSeesTheBoxAndNoHistory()
    {
        playOnce(*m_ruth);
        lookAtTheCrew();
        chooseAPlace();
        sayYes();
        const QString code = codeFor("Guest for a few days");
        QVERIFY2(!code.isEmpty(), page(*m_ruth).constData());
        knock(code, "Archie");
        letIn("Archie");
        QVERIFY(!m_other->hand().names().contains(text("Notebook")));
        QVERIFY(tap(*m_other, "Crew"));
        QVERIFY2(m_other->hand().reads(text("A guest until 17 January")),
                 page(*m_other).constData());
        QVERIFY(!m_other->hand().reads(text("Let somebody in")));
        for (const journal::LaneKind kind : {journal::LaneKind::Home, journal::LaneKind::CheckIns,
                                             journal::LaneKind::Goals, journal::LaneKind::Notes})
            QCOMPARE(eventsOfOthers(*m_other, kind), 0);
        go(*m_other, "box");
        QVERIFY2(tap(*m_other, "pegs, 6"), page(*m_other).constData());
        loseOne(*m_other);
        everybodyShares(*m_other);
        everybodyShares(*m_ruth);
        go(*m_ruth, "box");
        QVERIFY2(comes(*m_ruth, "pegs, 5"), page(*m_ruth).constData());
    }

    /// The phone of the one who packs too has the table, and no child; ticks go both ways (T4).
    void twoPackAtOneTable()
    {
        m_ruth.reset();
        layTheTable(m_folder.filePath(text("morven")));
        m_ruth = std::make_unique<OpenApp>(m_folder.filePath(text("morven")), mondayEvening);
        go(*m_ruth, "packing");
        look(*m_ruth, "packing");
        QVERIFY2(tap(*m_ruth, "Somebody packs with you"), page(*m_ruth).constData());
        look(*m_ruth, "packers-none");
        chooseAPlace();
        sayYes();
        const QString code = codeFor("Somebody who packs");
        QVERIFY2(!code.isEmpty(), page(*m_ruth).constData());
        look(*m_ruth, "code");
        knock(code, "Callum");
        letIn("Callum", "This phone packs");
        look(*m_other, "workbench");
        QVERIFY(!m_other->hand().names().contains(text("Notebook")));
        QVERIFY2(tap(*m_other, "Packing table"), page(*m_other).constData());
        QVERIFY2(tap(*m_other, "K1 for Oona"), page(*m_other).constData());
        QVERIFY(tap(*m_other, "Rubber bands: It is in"));
        everybodyShares(*m_other);
        look(*m_other, "crew");
        QVERIFY(m_other->hand().names().contains(text("Leave the crew")));
        QVERIFY(m_other->hand().reads(text("Morven")));
        QVERIFY(!m_other->hand().names().contains(text("Take out: Morven")));
        everybodyShares(*m_ruth, "packers");
        look(*m_ruth, "packers");
        QVERIFY(m_ruth->hand().names().contains(text("Take out: Callum")));
        QVERIFY2(m_ruth->hand().reads(text("Callum")), page(*m_ruth).constData());
        QVERIFY(tap(*m_ruth, "Back to the packing table"));
        QVERIFY2(comes(*m_ruth, "1 of 3 in."), page(*m_ruth).constData());
        go(*m_ruth, "crew"); // Fin's, in which nobody else is
        QVERIFY(!m_ruth->hand().reads(text("Callum")));
    }

    /// From an empty phone to the first box with a family: nobody has handed a therapist anything.
    void aTherapistBeginsWithNothing()
    {
        const QString file = m_folder.filePath(text("Morag"));
        m_ruth.reset();
        m_ruth = std::make_unique<OpenApp>(file, mondayEvening);
        QVERIFY2(tap(*m_ruth, "I am a therapist"), page(*m_ruth).constData());
        look(*m_ruth, "clinic");
        QVERIFY(m_ruth->hand().write(text("What do families call you?"), text("Morag")));
        QVERIFY(tap(*m_ruth, "Begin"));
        QVERIFY2(m_ruth->hand().reads(text("No box is with a child yet")),
                 page(*m_ruth).constData());
        look(*m_ruth, "workbench-first");
        QVERIFY(!m_ruth->hand().names().contains(text("Notebook")));
        m_ruth.reset();
        packOne(file, "Oona");
        m_ruth = std::make_unique<OpenApp>(file, mondayEvening);
        QVERIFY2(tap(*m_ruth, "Packing table"), page(*m_ruth).constData());
        QVERIFY2(tap(*m_ruth, "K1 for Oona"), page(*m_ruth).constData());
        QVERIFY2(tap(*m_ruth, "Hand over to Oona"), page(*m_ruth).constData());
        go(*m_ruth, "workbench");
        QVERIFY2(m_ruth->hand().reads(text("Oona")), page(*m_ruth).constData());
        look(*m_ruth, "workbench-one");
        lookAtTheCrew();
        chooseAPlace();
        sayYes();
        const QString code = codeFor("Family or carer");
        QVERIFY2(!code.isEmpty(), page(*m_ruth).constData());
        knock(code, "Archie");
        letIn("Archie", "How old is Oona?");
        look(*m_other, "home-first");
        QVERIFY(tap(*m_other, "5: age in years"));
        QVERIFY(tap(*m_other, "Go on"));
        look(*m_other, "home-others");
        QVERIFY(tap(*m_other, "Go on"));
        QVERIFY2(tap(*m_other, "Must anyone avoid latex? Yes"), page(*m_other).constData());
        QVERIFY(tap(*m_other, "Begin"));
        QVERIFY2(m_other->hand().reads(text("Play with Oona")), page(*m_other).constData());
        look(*m_other, "first-evening");
        go(*m_other, "home-sheet");
        QVERIFY2(m_other->hand().reads(text("5 years")), page(*m_other).constData());
        look(*m_other, "home-sheet-first");
        go(*m_other, "box");
        QVERIFY2(m_other->hand().reads(text("rubber bands, 6")), page(*m_other).constData());
    }

    /// "Not this phone": the words differ, or nobody knows who it is.
    void whoIsRefusedStaysOutside()
    {
        lookAtTheCrew();
        chooseAPlace();
        sayYes();
        const QString code = codeFor("Family or carer");
        knock(code, "Gran");
        QVERIFY2(comes(*m_ruth, "Somebody is here"), page(*m_ruth).constData());
        QVERIFY(tap(*m_ruth, "Not this phone"));
        QVERIFY2(m_ruth->hand().reads(text("Who is it?")), page(*m_ruth).constData());
        Hand::settle(2500);
        QVERIFY(m_other->hand().reads(text("Waiting to be let in")));
        QCOMPARE(m_ruth->graph.crewLife().members()->rowCount(), 1);
    }

    /// Off with one tap, without asking anybody (job.md D4).
    void afterANoNothingGoesOut()
    {
        lookAtTheCrew();
        chooseAPlace();
        sayYes();
        QVERIFY(!codeFor("Family or carer").isEmpty());
        everybodyShares(*m_ruth);
        QVERIFY(tap(*m_ruth, "Shared place"));
        QVERIFY2(tap(*m_ruth, "Stop sharing"), page(*m_ruth).constData());
        const QStringList before = filesIn(m_place);
        QVERIFY(tap(*m_ruth, "Back to the crew"));
        QVERIFY2(m_ruth->hand().reads(text("On this phone only")), page(*m_ruth).constData());
        QVERIFY(m_ruth->hand().reads(text("Nothing leaves it")));
        QVERIFY(!m_ruth->hand().reads(text("Share now")));
        m_ruth->graph.crewLife().shareNow();
        playOnce(*m_ruth);
        Hand::settle(500);
        QCOMPARE(filesIn(m_place), before);
    }

    void whoLeavesIsMissedByTheOthers()
    {
        lookAtTheCrew();
        chooseAPlace();
        sayYes();
        knock(codeFor("Family or carer"), "Gran");
        letIn("Gran");
        QVERIFY(tap(*m_other, "Crew"));
        QVERIFY2(tap(*m_other, "Leave the crew"), page(*m_other).constData());
        QVERIFY(tap(*m_other, "Leave now"));
        for (int waits = 0; waits < 100 && m_other->graph.crewLife().busy(); ++waits)
            Hand::settle(100);
        QVERIFY(!m_other->graph.crewLife().inCrew());
        everybodyShares(*m_ruth);
        QCOMPARE(m_ruth->graph.crewLife().members()->rowCount(), 1);
    }
};

QTEST_MAIN(TestCrewOnScreen)
#include "tst_crew_on_screen.moc"
