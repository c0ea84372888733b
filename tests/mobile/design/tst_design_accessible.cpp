#include <QtGui/QAccessible>
#include <QtGui/private/qguiapplication_p.h>
#include <QtGui/qpa/qplatformaccessibility.h>
#include <QtGui/qpa/qplatformintegration.h>
#include <QtQml/QQmlComponent>
#include <QtQml/QQmlEngine>
#include <QtQuick/QQuickItem>
#include <QtQuick/QQuickView>
#include <QtTest/QSignalSpy>
#include <QtTest/QTest>

/// What a screen reader meets. How to reach it offscreen: reference/platform.md, section 4.
class TestDesignAccessible : public QObject
{
    Q_OBJECT
private slots:
    void initTestCase();
    void controlsHaveRoleAndName_data();
    void controlsHaveRoleAndName();
    void pressingByScreenReaderIsAClick_data();
    void pressingByScreenReaderIsAClick();
    void whatCannotBePressedSaysWhy();
    void theCurrentTabIsSelected();
    void theChosenOneIsChecked();
    void pressingAHeldControlByScreenReaderOpensIt();
    void aStepperSaysItsValueAndMoves();
    void aChoiceIsDecidedByItsCaller();
    void decorationIsNotSpoken();
};

namespace {

/// A component of the design in a window of its own.
class Shown
{
public:
    explicit Shown(const QByteArray &component)
    {
        m_view.engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent source(m_view.engine());
        source.setData("import QtQuick\nimport Lidlark.Design\n" + component, QUrl());
        m_object.reset(source.create());
        if (!m_object)
            qFatal("%s", qPrintable(source.errorString()));
        item()->setParentItem(m_view.contentItem());
        m_view.resize(360, 400);
        m_view.show();
    }
    QQuickItem *item() const { return qobject_cast<QQuickItem *>(m_object.get()); }
    QAccessibleInterface *spoken() const { return QAccessible::queryAccessibleInterface(item()); }

private:
    QQuickView m_view;
    std::unique_ptr<QObject> m_object;
};

void addControls()
{
    QTest::addColumn<QByteArray>("component");
    QTest::addColumn<int>("role");
    QTest::addColumn<QString>("name");
    const auto row = [](const char *component, QAccessible::Role role, const char *name) {
        QTest::newRow(component) << QByteArray(component) << int(role) << QString::fromUtf8(name);
    };
    row("PaperButton { text: 'Play' }", QAccessible::Button, "Play");
    row("Slip { text: 'Next step' }", QAccessible::Button, "Next step");
    row("StitchedLink { text: 'Stop here' }", QAccessible::Button, "Stop here");
    row("FilterChip { text: 'Quiet' }", QAccessible::CheckBox, "Quiet");
    // Qt 6.4.2 gives a button no other role than these two (reference/platform.md, section 4).
    row("ChoiceRow { text: 'Dark'; exclusive: true }", QAccessible::CheckBox, "Dark");
    row("Tab { text: 'Box' }", QAccessible::Button, "Box");
    row("SpeechButton { accessibleName: 'Read aloud' }", QAccessible::Button, "Read aloud");
    row("BigYes { question: 'All back?'; answer: 'Yes' }", QAccessible::Button, "All back? Yes");
    row("CautionButton { text: 'It burst' }", QAccessible::Button, "It burst");
    row("LinkRow { text: 'Pegs'; note: 'Six' }", QAccessible::Button, "Pegs. Six");
    row("OfferCard { name: 'Slow Oars'; supervision: 'Right beside'; playText: 'play 5' }",
        QAccessible::Button, "Slow Oars. Right beside. play 5");
    row("TrayWell { text: 'pegs'; count: '6'; tag: 'low' }", QAccessible::Button, "pegs. 6. low");
    row("NameTagLine { names: ['Fin', 'Ruth']; note: 'in the room' }", QAccessible::Button,
        "Fin, Ruth in the room");
}

} // namespace

void TestDesignAccessible::initTestCase()
{
    QGuiApplicationPrivate::platformIntegration()->accessibility()->setActive(true);
}

void TestDesignAccessible::controlsHaveRoleAndName_data()
{
    addControls();
}

void TestDesignAccessible::controlsHaveRoleAndName()
{
    QFETCH(QByteArray, component);
    const Shown shown(component);
    QVERIFY(shown.spoken());
    QTEST(int(shown.spoken()->role()), "role");
    QTEST(shown.spoken()->text(QAccessible::Name), "name");
}

void TestDesignAccessible::pressingByScreenReaderIsAClick_data()
{
    addControls();
}

void TestDesignAccessible::pressingByScreenReaderIsAClick()
{
    QFETCH(QByteArray, component);
    const Shown shown(component);
    QSignalSpy clicked(shown.item(), SIGNAL(clicked()));
    QAccessibleActionInterface *actions = shown.spoken()->actionInterface();
    QVERIFY(actions);
    actions->doAction(actions->actionNames().contains(QAccessibleActionInterface::toggleAction())
                          ? QAccessibleActionInterface::toggleAction()
                          : QAccessibleActionInterface::pressAction());
    QCOMPARE(clicked.count(), 1);
}

void TestDesignAccessible::whatCannotBePressedSaysWhy()
{
    const Shown shown("PaperButton { text: 'Play'; notNowReason: 'The dough is drying.' }");
    QCOMPARE(shown.spoken()->text(QAccessible::Description), QString("The dough is drying."));
    QSignalSpy clicked(shown.item(), SIGNAL(clicked()));
    shown.spoken()->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    QCOMPARE(clicked.count(), 0);
}

void TestDesignAccessible::theCurrentTabIsSelected()
{
    QVERIFY(Shown("Tab { text: 'Box'; current: true }").spoken()->state().selected);
    QVERIFY(!Shown("Tab { text: 'Box' }").spoken()->state().selected);
}

void TestDesignAccessible::theChosenOneIsChecked()
{
    QVERIFY(Shown("FilterChip { text: 'Quiet'; picked: true }").spoken()->state().checked);
    QVERIFY(Shown("ChildTile { text: 'Resting'; picked: true }").spoken()->state().selected);
    QVERIFY(!Shown("ChoiceRow { text: 'Dark' }").spoken()->state().checked);
}

void TestDesignAccessible::pressingAHeldControlByScreenReaderOpensIt()
{
    const Shown shown("HeldAdultControl { text: 'adult: hold' }");
    QSignalSpy held(shown.item(), SIGNAL(held()));
    shown.spoken()->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    QCOMPARE(held.count(), 1);
}

void TestDesignAccessible::aStepperSaysItsValueAndMoves()
{
    const Shown shown("Stepper { text: 'pegs'; value: 5; to: 6 }");
    QCOMPARE(shown.spoken()->role(), QAccessible::SpinBox);
    QCOMPARE(shown.spoken()->text(QAccessible::Name), QString("pegs: 5"));
    QVERIFY(shown.spoken()->valueInterface());
    QCOMPARE(shown.spoken()->valueInterface()->currentValue().toInt(), 5);
    QCOMPARE(shown.spoken()->valueInterface()->maximumValue().toInt(), 6);
    QSignalSpy changed(shown.item(), SIGNAL(changed(int)));
    QAccessibleActionInterface *actions = shown.spoken()->actionInterface();
    actions->doAction(QAccessibleActionInterface::increaseAction());
    QCOMPARE(changed.takeFirst().constFirst().toInt(), 6);
    shown.item()->setProperty("value", 6);
    actions->doAction(QAccessibleActionInterface::increaseAction());
    QCOMPARE(changed.count(), 0); // no further than that
    actions->doAction(QAccessibleActionInterface::decreaseAction());
    QCOMPARE(changed.takeFirst().constFirst().toInt(), 5);
}

void TestDesignAccessible::aChoiceIsDecidedByItsCaller()
{
    for (const char *component :
         {"FilterChip { text: 'Quiet' }", "GradeCard { text: 'Easier'; width: 200 }"}) {
        const Shown shown(component);
        shown.spoken()->actionInterface()->doAction(QAccessibleActionInterface::toggleAction());
        QVERIFY2(!shown.spoken()->state().checked, component); // it only asked
        shown.item()->setProperty("picked", true);
        shown.item()->setProperty("chosen", true);
        QVERIFY2(shown.spoken()->state().checkable, component);
        QVERIFY2(shown.spoken()->state().checked, component);
    }
    QVERIFY(!Shown("FilterChip { text: 'Forget it'; acts: true }").spoken()->state().checkable);
}

void TestDesignAccessible::decorationIsNotSpoken()
{
    const Shown picture("Drawing { name: 'item-peg'; alt: 'A clothes peg' }");
    QCOMPARE(picture.spoken()->role(), QAccessible::Graphic);
    QCOMPARE(picture.spoken()->text(QAccessible::Name), QString("A clothes peg"));
    const Shown chart("UseChart { pieces: [1, 2]; text: 'Pegs: 1 in the week of 4 January.' }");
    QCOMPARE(chart.spoken()->role(), QAccessible::StaticText);
    QCOMPARE(chart.spoken()->text(QAccessible::Name), QString("Pegs: 1 in the week of 4 January."));
    const Shown button("PaperButton { text: 'Play'; sign: 'sign-box' }");
    QCOMPARE(button.spoken()->childCount(), 0);
}

QTEST_MAIN(TestDesignAccessible)
#include "tst_design_accessible.moc"
