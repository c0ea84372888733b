#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards the search over activities and things, for adults (job.md F2: each that is held back
/// shows its reason).
class TestSearchOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void search(const std::string &child, const std::string &person, const std::string &home,
                const char *words)
    {
        m_app.reset();
        const QString file = m_folder.filePath(text("store.lidlark"));
        writeStore(file, child, person, home);
        m_app = std::make_unique<OpenApp>(file, mondayEvening);
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY(hand().write(text("Find by name"), text(words)));
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void cleanup() { m_app.reset(); }

    /// A thing of the box leads to its page, and back to the same words.
    void aThingInTheBoxLeadsToItsPage()
    {
        search("Fin", "Ruth", "h-fin", "eyes");
        QVERIFY2(hand().reads(text("In the box: 6.")), page().constData());
        QVERIFY(hand().find(text("Hidden Harbour Lights")) != nullptr); // it is played with them
        QVERIFY(hand().tap(text("Stick-on eyes")));
        QVERIFY(hand().reads(text("6 in the box")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY2(hand().reads(text("In the box: 6.")), page().constData());
        QVERIFY(hand().find(text("Slow Oars")) == nullptr);
    }

    void aThingOfAnotherBoxSaysSo()
    {
        const catalogue::ItemKind *bands = realCatalogue().item({"bands"});
        const catalogue::ItemKind *loops = realCatalogue().item(bands->swap->with);
        search("Fin", "Ruth", "h-fin", loops->name.c_str());
        QVERIFY2(hand().reads(text("Not in this box.")), page().constData());
        const QString name = QString::fromStdString(loops->name).mid(1);
        for (const QString &control : hand().names())
            QVERIFY2(!control.contains(name), qPrintable(control)); // it leads nowhere
    }

    void aThingOfTheHouseSaysSo()
    {
        const auto &items = realCatalogue().items();
        const auto extra = std::ranges::find_if(items, [](const catalogue::ItemKind &kind) {
            return kind.source == catalogue::Source::Home;
        });
        search("Fin", "Ruth", "h-fin", extra->name.c_str());
        QVERIFY2(hand().reads(text("From the house, not from the box.")), page().constData());
    }

    /// Mirren, who is two, may be here: the eyes say why they stay away.
    void whatIsHeldBackSaysWhy()
    {
        search("Lewis", "Catriona", "h-lewis", "eyes");
        QVERIFY2(hand().reads(text("Mirren")), page().constData());
        QQuickItem *row = hand().find(text("Stick-on eyes"));
        QVERIFY(row != nullptr);
        const QString spoken = QAccessible::queryAccessibleInterface(row)->text(QAccessible::Name);
        QVERIFY2(spoken.contains(text("Mirren is under three and is here")), qPrintable(spoken));
    }

    void withoutWordsThereAreNoThings()
    {
        search("Fin", "Ruth", "h-fin", "");
        QVERIFY(!hand().reads(text("In the box:")));
        QVERIFY(hand().find(text("Slow Oars")) != nullptr);
    }

    void nothingIsCalledThat()
    {
        search("Fin", "Ruth", "h-fin", "xylophone");
        QVERIFY2(hand().reads(text("Nothing is called that")), page().constData());
    }
};

QTEST_MAIN(TestSearchOnScreen)
#include "tst_search_on_screen.moc"
