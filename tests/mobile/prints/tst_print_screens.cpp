#include <QtTest>

#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/prints/page_preview.h"
#include "tests/mobile/prints/print_room.h"

Q_IMPORT_QML_PLUGIN(Lidlark_BridgePlugin)
Q_IMPORT_QML_PLUGIN(Lidlark_DesignPlugin)
Q_IMPORT_QML_PLUGIN(Lidlark_PrintsPlugin)

using namespace lidlark;
using namespace lidlark::mobile;
using namespace lidlark::test;

/// Guards the pages on which a print is chosen and looked at, each by itself in a window.
class TestPrintScreens : public QObject
{
    Q_OBJECT

private:
    PrintRoom m_room;
    QQmlEngine m_engine;
    QQuickWindow m_window;
    std::unique_ptr<QQuickItem> m_page;

    void show(const char *file, QVariantMap properties, const QSize &size = {360, 740})
    {
        m_page.reset();
        QQmlComponent component(
            &m_engine, QUrl(QStringLiteral("qrc:/qt/qml/Lidlark/Prints/") + QLatin1String(file)));
        properties.insert(QStringLiteral("household"), QVariant::fromValue(&m_room.morven()));
        m_page.reset(qobject_cast<QQuickItem *>(component.createWithInitialProperties(properties)));
        QVERIFY2(m_page, qPrintable(component.errorString()));
        m_window.resize(size);
        m_page->setParentItem(m_window.contentItem());
        m_page->setSize(size);
        m_window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&m_window));
        QTest::qWait(50);
    }
    void showPrint(const char *print, const QSize &size = {360, 740})
    {
        show("PrintPreviewScreen.qml", {{QStringLiteral("print"), QString::fromLatin1(print)}},
             size);
    }
    [[nodiscard]] PrintViewModel &job() const
    {
        return *m_page->findChild<PrintViewModel *>(QStringLiteral("printJob"));
    }
    [[nodiscard]] PagePreview *preview() const { return m_page->findChild<PagePreview *>(); }
    void keepPicture(const char *name)
    {
        if (!qEnvironmentVariableIsEmpty("LIDLARK_PRINTS"))
            m_window.grabWindow().save(
                QDir(m_room.papers()).filePath(QLatin1String(name) + QStringLiteral(".png")));
    }

private slots:
    void initTestCase()
    {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_room.open();
        m_room.morven().setChild(QStringLiteral("Fin"));
    }
    void cleanupTestCase() { m_page.reset(); }

    void whatCanBePrintedIsListed()
    {
        show("PrintsScreen.qml", {});
        keepPicture("screen prints");
        m_room.morven().setChild(QStringLiteral("Mairead"));
        show("PrintsScreen.qml", {});
        const auto *note = m_page->findChild<QQuickItem *>(QStringLiteral("lidOutOfDate"));
        QVERIFY(note != nullptr && note->isVisible()); // scenario 7: the lid is out of date
        m_room.morven().setChild(QStringLiteral("Fin"));
    }

    void aPageIsSeenAsWideAsTheScreen()
    {
        showPrint("lid-list");
        keepPicture("screen lid-list");
        QCOMPARE(job().pageCount(), 2); // its back: the words that go with the box
        QVERIFY(preview() == nullptr || preview()->implicitHeight() > preview()->width());
        for (const char *print : {"tally", "travel", "kite-card", "summary", "label", "labels",
                                  "restock", "pack-list", "build-sheet"}) {
            showPrint(print);
            QVERIFY2(job().problem().isEmpty() && job().pageCount() > 0, print);
            keepPicture((QByteArray("screen ") + print).constData());
        }
        showPrint("label", {320, 568});
        keepPicture("screen label small");
    }

    void languagesAreChosenAsMayBe()
    {
        showPrint("lid-list");
        job().toggleLanguage(1);
        QCOMPARE(job().chosen(), (QList<bool>{true, true, false}));
        job().toggleLanguage(2); // a third takes the place of the second
        QCOMPARE(job().chosen(), (QList<bool>{true, false, true}));
        job().toggleLanguage(0);
        job().toggleLanguage(2); // the last one stays
        QCOMPARE(job().chosen(), (QList<bool>{false, false, true}));
        showPrint("tally");
        job().toggleLanguage(1);
        QCOMPARE(job().chosen(), (QList<bool>{false, true, false}));
    }

    void aContactThatDoesNotFitIsRefusedByName()
    {
        showPrint("label");
        QVERIFY(!job().keepContact(QString(61, u'x')));
        QVERIFY2(job().contactProblem().contains(QStringLiteral("contact")),
                 qPrintable(job().contactProblem()));
        QCOMPARE(job().contact(), QString::fromLatin1(PrintRoom::contact));
        QVERIFY(job().keepContact(QString::fromLatin1(PrintRoom::contact)));
        QVERIFY(job().contactProblem().isEmpty());
    }

    void aFileIsNamedAfterTheBoxAndNotTheChild()
    {
        showPrint("lid-list");
        const QTemporaryDir folder;
        job().setProperty("folder", folder.path());
        QVERIFY2(job().save(), qPrintable(job().said()));
        const QStringList files = QDir(folder.path()).entryList(QDir::Files);
        QCOMPARE(files.size(), 1);
        QVERIFY2(!files.constFirst().contains(QStringLiteral("Fin")),
                 qPrintable(files.constFirst()));
        QVERIFY2(files.constFirst().endsWith(QStringLiteral("R1.pdf")),
                 qPrintable(files.constFirst()));
        job().setProperty("folder", folder.filePath(files.constFirst())); // no folder at all
        QVERIFY(!job().save());
        QVERIFY2(job().said().contains(QStringLiteral("could not be saved")),
                 qPrintable(job().said()));
    }
};

QTEST_MAIN(TestPrintScreens)
#include "tst_print_screens.moc"
