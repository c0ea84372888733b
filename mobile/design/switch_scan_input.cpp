// What a switch sends: keys and touches, taken before the screen sees them.
#include "switch_scan.h"

#include <QtGui/QKeyEvent>
#include <QtQuick/QQuickWindow>

namespace lidlark::design {
namespace {

/// Keys of the phone itself, and those that do nothing alone.
bool isNoSwitch(const QKeyEvent &key)
{
    switch (key.key()) {
    case Qt::Key_Escape:
    case Qt::Key_Back:
    case Qt::Key_Home:
    case Qt::Key_Menu:
    case Qt::Key_VolumeUp:
    case Qt::Key_VolumeDown:
    case Qt::Key_VolumeMute:
    case Qt::Key_PowerOff:
    case Qt::Key_Shift:
    case Qt::Key_Control:
    case Qt::Key_Alt:
    case Qt::Key_AltGr:
    case Qt::Key_Meta:
    case Qt::Key_CapsLock:
        return true;
    default:
        return (key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) != 0;
    }
}

bool isPress(int key)
{
    return key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter;
}

} // namespace

bool SwitchScan::eventFilter(QObject *watched, QEvent *event)
{
    if (m_switches > 0) {
        switch (event->type()) {
        case QEvent::KeyPress:
        case QEvent::KeyRelease:
            if (takesKey(*static_cast<QKeyEvent *>(event)))
                return true;
            break;
        case QEvent::MouseButtonPress:
        case QEvent::MouseButtonDblClick:
        case QEvent::MouseMove:
        case QEvent::MouseButtonRelease:
        case QEvent::TouchBegin:
        case QEvent::TouchUpdate:
        case QEvent::TouchCancel:
        case QEvent::TouchEnd:
            if (m_switches == 1 && takesTouch(*static_cast<QPointerEvent *>(event)))
                return true;
            break;
        default:
            break;
        }
    }
    return QQuickItem::eventFilter(watched, event);
}

bool SwitchScan::isOnward(int key) const
{
    return m_onwardKey != 0 ? key == m_onwardKey : key == Qt::Key_Tab || key == Qt::Key_Right;
}

bool SwitchScan::takesKey(const QKeyEvent &key)
{
    const QQuickItem *focused = m_watched->activeFocusItem();
    if (isNoSwitch(key) || (focused != nullptr && focused->property("takesKeys").toBool()))
        return false;
    const bool onward = m_switches == 2 && isOnward(key.key());
    if (m_switches == 2 && !onward && !isPress(key.key()))
        return false;
    if (key.isAutoRepeat())
        return true;
    const bool down = key.type() == QEvent::KeyPress;
    if (onward) {
        if (down && !m_down)
            goOn();
        return true;
    }
    const bool ended = m_down && !down;
    m_down = down;
    m_step.stop();
    if (ended && !m_pause.isActive())
        press();
    else if (ended)
        show();
    return true;
}

/// An adult holds the held control with a finger, whatever the child's switch is.
bool SwitchScan::isLeftToAnAdult(const QPointF &point) const
{
    for (const ScanEntry &entry : scanEntries(m_root)) {
        for (const QPointer<QQuickItem> &stop : entry.stops) {
            if (stop->property("pressedTwice").toBool() &&
                stop->mapRectToScene(stop->boundingRect()).contains(point))
                return true;
        }
    }
    return false;
}

bool SwitchScan::takesTouch(QPointerEvent &touch)
{
    const bool begins = touch.isBeginEvent();
    const bool ends = touch.isEndEvent() || touch.type() == QEvent::TouchCancel;
    if (begins)
        m_leftAlone = isLeftToAnAdult(touch.point(0).scenePosition());
    if (m_leftAlone) {
        m_leftAlone = !ends;
        return false;
    }
    touch.accept();
    if (begins) {
        m_since.start();
        m_down = true;
        m_step.stop();
    } else if (ends && m_down) {
        m_down = false;
        const bool counts = touch.type() != QEvent::TouchCancel && !m_pause.isActive() &&
                            m_since.elapsed() >= m_leastTouchMs;
        if (counts)
            press();
        else
            show();
    }
    return true;
}

} // namespace lidlark::design
