#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/sync/consent.h"
#include "mobile/prints/print_view_model.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards that a family finds its prints, sees each before it is kept, and keeps it as a file
/// (job.md A9, T5, T12, D3, D4).
class TestPrintsOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void open(const QString &file)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(file, mondayEvening);
    }
    [[nodiscard]] mobile::PrintViewModel *job() const
    {
        auto *job = m_app->window->findChild<mobile::PrintViewModel *>(text("printJob"));
        if (job != nullptr)
            job->setProperty("folder", m_folder.filePath(text("papers")));
        return job;
    }
    [[nodiscard]] QStringList files() const
    {
        return QDir(m_folder.filePath(text("papers"))).entryList(QDir::Files);
    }
    void openPrint(const char *name) const
    {
        QVERIFY2(hand().tap(text("Box")), page());
        QVERIFY2(hand().tap(text("On paper")), page());
        QVERIFY2(hand().tap(text(name)), page());
        QVERIFY(job() != nullptr);
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
        m_file = m_folder.filePath(text("ruth"));
        writeStore(m_file, "Fin", "Ruth", "h-fin");
    }
    void init() { open(m_file); }
    void cleanup()
    {
        m_app.reset();
        QDir(m_folder.filePath(text("papers"))).removeRecursively();
    }

    void aFamilyIsOfferedItsOwnPrintsAndNoLabels()
    {
        QVERIFY2(hand().tap(text("Box")), page());
        QVERIFY2(hand().tap(text("On paper")), page());
        for (const char *name : {"Lid list", "One week on paper", "Away from home",
                                 "The kite on paper", "How things stand"})
            QVERIFY2(hand().find(text(name)) != nullptr, name);
        QVERIFY2(!hand().reads(text("Label")) && !hand().reads(text("Restock round")), page());
    }

    void aLidListIsSeenInTwoLanguagesAndKept()
    {
        openPrint("Lid list");
        QCOMPARE(job()->pageCount(), 2); // its back: words that go with the box
        QVERIFY2(hand().reads(text("Lid list, page 1 of 2")), page());
        QVERIFY2(hand().tap(text("Polski")), page());
        QCOMPARE(job()->chosen(), (QList<bool>{true, true, false}));
        QVERIFY2(hand().tap(text("A6")), page());
        QVERIFY2(hand().tap(text("Left half")), page());
        QVERIFY2(hand().tap(text("Keep it as a file")), page());
        QCOMPARE(files().size(), 1);
        QVERIFY2(!files().constFirst().contains(text("Fin")), qPrintable(files().constFirst()));
        QVERIFY2(hand().reads(text("Saved as")), page());
    }

    /// Sharing is off until an adult has said yes (job.md D3, D4): then the page is seen and not
    /// kept, and what was played is on it only when that is asked for, too.
    void theSummaryWaitsForAYesToSharing()
    {
        openPrint("How things stand");
        QVERIFY(job()->notNowReason().startsWith(text("Nobody here has said yes to sharing.")));
        (void)hand().tap(text("Keep it as a file")); // it says why, and does nothing
        QCOMPARE(files(), QStringList());
        QVERIFY(!job()->save());
        QCOMPARE(files(), QStringList());
        m_app.reset();
        {
            auto database = store::Database::open(m_file.toStdString());
            QVERIFY(sync::consentToSharing(
                        *database, {"Ruth", usecase::island::dayOne(), sync::consentWording})
                        .ok());
        }
        open(m_file);
        openPrint("How things stand");
        QVERIFY(!job()->tellPlays());
        QVERIFY2(hand().tap(text("With what was played and noticed")), page());
        QVERIFY(job()->tellPlays());
        QVERIFY2(hand().tap(text("Keep it as a file")), page());
        QCOMPARE(files().size(), 1);
    }

    void thePhonesOwnBackLeadsToWhereItBegan()
    {
        openPrint("Away from home");
        QTest::keyClick(m_app->window, Qt::Key_Escape);
        Hand::settle(300);
        QVERIFY2(hand().find(text("One week on paper")) != nullptr, page());
        QTest::keyClick(m_app->window, Qt::Key_Escape);
        Hand::settle(300);
        QVERIFY2(hand().find(text("What to ask for")) != nullptr, page());
    }
};

QTEST_MAIN(TestPrintsOnScreen)
#include "tst_prints_on_screen.moc"
