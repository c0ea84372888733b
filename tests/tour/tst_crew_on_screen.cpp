#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/crew_life.h"
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
            if (app.hand().reads(text(words)))
                return true;
            Hand::settle(100);
        }
        return false;
    }
    static bool tap(const OpenApp &app, const char *name) { return app.hand().tap(text(name)); }

    void chooseAPlace()
    {
        QVERIFY(tap(*m_ruth, "Crew"));
        QVERIFY2(m_ruth->hand().reads(text("On this phone only")), page(*m_ruth).constData());
        QVERIFY(m_ruth->hand().reads(text("Nothing leaves it")));
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
        QVERIFY2(m_other->hand().reads(text("All nine words are right")), page(*m_other).constData());
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
    void letIn(const char *name)
    {
        QVERIFY2(comes(*m_ruth, "Somebody is here"), page(*m_ruth).constData());
        QVERIFY(m_ruth->hand().reads(text(name)));
        QVERIFY(!sameWords(*m_ruth).isEmpty());
        QCOMPARE(sameWords(*m_ruth), sameWords(*m_other));
        QVERIFY(tap(*m_ruth, "Yes, let"));
        QVERIFY2(comes(*m_ruth, " is in. "), page(*m_ruth).constData());
        QVERIFY2(comes(*m_other, "You are in"), page(*m_other).constData());
        QVERIFY(tap(*m_other, "Begin"));
        QVERIFY2(comes(*m_other, "Play with Fin"), page(*m_other).constData());
    }
    static void everybodyShares(OpenApp &app)
    {
        QVERIFY(tap(app, "Crew"));
        QVERIFY2(tap(app, "Share now"), page(app).constData());
        for (int waits = 0; waits < 100 && app.graph.crewLife().busy(); ++waits)
            Hand::settle(100);
        QVERIFY2(app.graph.crewLife().troubles().isEmpty(),
                 app.graph.crewLife().troubles().join(u'|').toUtf8().constData());
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
        for (const char *name : {"ruth", "Gran", "Archie"}) {
            for (const QString &file : QDir(m_folder.path()).entryList({text(name) + u'*'}, QDir::Files))
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
        chooseAPlace();
        sayYes();
        const QString code = codeFor("Family or carer");
        QVERIFY2(!code.isEmpty(), page(*m_ruth).constData());
        knock(code, "Gran");
        letIn("Gran");
    }
};

QTEST_MAIN(TestCrewOnScreen)
#include "tst_crew_on_screen.moc"
