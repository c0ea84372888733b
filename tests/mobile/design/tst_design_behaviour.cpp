#include <QtQml/QQmlEngine>
#include <QtQuickTest/quicktest.h>

/// Lets the test files find the module that is compiled in.
class CompiledInModules : public QObject
{
    Q_OBJECT
public slots:
    void qmlEngineAvailable(QQmlEngine *engine)
    {
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    }
};

QUICK_TEST_MAIN_WITH_SETUP(design, CompiledInModules)
#include "tst_design_behaviour.moc"
