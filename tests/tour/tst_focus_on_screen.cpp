#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards where the keyboard and a screen reader stand: at the heading of a page that has come, and
/// still on a control after it was pressed, though what it says has changed (job.md A3).
class TestFocusOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QQuickItem *focused() const { return m_app->window->activeFocusItem(); }
    [[nodiscard]] QObject *screens() const
    {
        return m_app->window->findChild<QObject *>(text("screens"));
    }
    void go(const char *where) const
    {
        QMetaObject::invokeMethod(screens(), "go", Q_ARG(QString, text(where)));
        Hand::settle(200);
    }
    void pressWithTheKeyboard(const char *name) const
    {
        QQuickItem *item = hand().find(text(name));
        QVERIFY2(item != nullptr, name);
        item->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(m_app->window, Qt::Key_Space);
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        const QString store = m_folder.filePath(QStringLiteral("Fin.lidlark"));
        writeStore(store, "Fin", "Ruth", "h-fin");
        m_app = std::make_unique<OpenApp>(store, mondayEvening);
    }
    void cleanup() { m_app.reset(); }

    void aPageBeginsAtItsHeading()
    {
        for (const auto &[where, heading] :
             std::map<const char *, const char *>{{"today", "Play with Fin"},
                                                  {"box", "Fin's box"},
                                                  {"settings", "Settings"},
                                                  {"home-sheet", "Home sheet"},
                                                  {"kite", "What is your kite doing?"},
                                                  {"grown-up", "Fin needs a grown-up"},
                                                  {"week", "The week ahead"}}) {
            go(where);
            QVERIFY2(focused() != nullptr, where);
            QCOMPARE(focused()->property("text").toString(), text(heading));
        }
    }

    void anAnswerOnTheHomeSheetKeepsItsPlace()
    {
        go("home-sheet");
        pressWithTheKeyboard("Yes: Is there a dog or a cat?");
        QVERIFY(focused()->property("picked").toBool());
        QCOMPARE(hand().find(text("Yes: Is there a dog or a cat?")), focused());
    }

    void aPieceThatComesHomeKeepsItsPlace()
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY(hand().tap(text("Hidden Harbour Lights")));
        QVERIFY(hand().tap(text("Stop here")));
        for (int eye = 1; eye <= 3; ++eye)
            pressWithTheKeyboard("Stick-on eyes");
        QCOMPARE(hand().find(text("Stick-on eyes: 3 of 6 home")), focused());
    }

    /// A key that can no longer be pressed hands on to the next one, and shows it by its ring.
    void aControlThatGoesAwayHandsOn()
    {
        go("count");
        QQuickItem *less = hand().find(text("One less: lace"));
        less->forceActiveFocus(Qt::TabFocusReason);
        for (int press = 0; press < 9 && less->isEnabled(); ++press)
            QTest::keyClick(m_app->window, Qt::Key_Space);
        QVERIFY(!less->isEnabled());
        QCOMPARE(focused(), hand().find(text("One more: lace")));
        QVERIFY(focused()->property("visualFocus").toBool());
    }

    /// On a child's screen Escape leads nowhere (job.md C4).
    void escapeLeadsBackAndNotOutOfAChildsScreen()
    {
        for (const auto &[where, back] :
             std::map<const char *, const char *>{{"settings", "crew"},
                                                  {"count", "box"},
                                                  {"week", "today"},
                                                  {"kite", "kite"},
                                                  {"choose", "choose"},
                                                  {"grown-up", "grown-up"}}) {
            go(where);
            QTest::keyClick(m_app->window, Qt::Key_Escape);
            QCOMPARE(screens()->property("route").toString(), text(back));
        }
    }
};

QTEST_MAIN(TestFocusOnScreen)
#include "tst_focus_on_screen.moc"
