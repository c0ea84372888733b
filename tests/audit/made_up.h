#pragma once

#include <QQmlComponent>
#include <QQmlEngine>
#include <QtTest>

#include "tests/audit/look_check.h"

#include <memory>

namespace lidlark::audit {

/// A page made up for one test.
class MadeUp
{
public:
    explicit MadeUp(const QByteArray &body, const QByteArray &colour = "white",
                    const QByteArray &imports = "")
    {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        const QByteArray source = "import QtQuick\nimport QtQuick.Templates as T\n" + imports +
                                  "Window { width: 360; height: 640; visible: true; color: '" +
                                  colour + "'\n" + body + "\n}";
        QQmlComponent component(&m_engine);
        component.setData(source, QUrl());
        m_window.reset(qobject_cast<QQuickWindow *>(component.create()));
        if (m_window == nullptr)
            qFatal("%s", qPrintable(component.errorString()));
        QTest::qWait(50);
        (void)m_window->grabWindow();
    }
    [[nodiscard]] Page page() const { return Page(m_window.get()); }
    [[nodiscard]] QQuickWindow *window() const { return m_window.get(); }
    [[nodiscard]] QObject *theme() const
    {
        return m_engine.singletonInstance<QObject *>(qmlTypeId("Lidlark.Design", 1, 0, "Theme"));
    }
    [[nodiscard]] QStringList faintWords() const
    {
        WordsLook look(m_window.get());
        look.look(page());
        return look.findings(page(), true);
    }

private:
    mutable QQmlEngine m_engine;
    std::unique_ptr<QQuickWindow> m_window;
};

} // namespace lidlark::audit
