#pragma once

#include "scan_tree.h"

#include <QtCore/QElapsedTimer>
#include <QtCore/QTimer>
#include <QtQml/qqmlregistration.h>

class QKeyEvent;
class QPointerEvent;

namespace lidlark::design {

/// One or two switches for the whole app: what can be pressed is lit in turn, groups first where a
/// screen has many controls, and a way back out at the end of each group. With one switch the light
/// goes on by itself, and any key or touch presses what is lit; with two, one key goes on and
/// another presses. There is no last round, and nothing moves on while a switch is held down.
/// Controls need no code of their own but a property `lit` and a function `press()`. Further ones,
/// where true: `writes` (it is written in), `pressedOften`, `pressedTwice`, `restsAfter`, and while
/// it has the focus `takesKeys`. Escape stays a key.
class SwitchScan : public QQuickItem
{
    Q_OBJECT
    QML_ELEMENT
    /// What is walked through. Another one, or restart(), begins at its top.
    Q_PROPERTY(QQuickItem *root READ root WRITE setRoot NOTIFY rootChanged FINAL REQUIRED)
    /// 0, 1 or 2.
    Q_PROPERTY(int switches READ switches WRITE setSwitches NOTIFY switchesChanged FINAL)
    /// How long each is lit with one switch.
    Q_PROPERTY(int stepMs MEMBER m_stepMs NOTIFY stepMsChanged FINAL)
    /// The Qt key that goes on; 0: Tab or Right.
    Q_PROPERTY(int onwardKey MEMBER m_onwardKey NOTIFY onwardKeyChanged FINAL)
    /// A touch must last as long to count.
    Q_PROPERTY(int leastTouchMs MEMBER m_leastTouchMs NOTIFY leastTouchMsChanged FINAL)
    /// The one control that is lit; null: a group, the way out of one, or nothing.
    Q_PROPERTY(QQuickItem *lit READ lit NOTIFY litChanged FINAL)
    /// Round the group that is lit, or that is left; empty: neither.
    Q_PROPERTY(QRectF ring READ ring NOTIFY ringChanged FINAL)
    /// The way out of the group is lit.
    Q_PROPERTY(bool leaving READ leaving NOTIFY litChanged FINAL)
public:
    explicit SwitchScan(QQuickItem *parent = nullptr);
    ~SwitchScan() override;

    QQuickItem *root() const { return m_root; }
    void setRoot(QQuickItem *root);
    int switches() const { return m_switches; }
    void setSwitches(int switches);
    QQuickItem *lit() const { return m_lit; }
    QRectF ring() const { return m_ring; }
    bool leaving() const;

    /// Nothing is pressed; the first of all is lit.
    Q_INVOKABLE void restart();

signals:
    void rootChanged();
    void switchesChanged();
    void stepMsChanged();
    void onwardKeyChanged();
    void leastTouchMsChanged();
    void litChanged();
    void ringChanged();
    /// A field was pressed: somebody wants to write in it.
    void writingWanted(QQuickItem *field);

protected:
    void itemChange(ItemChange change, const ItemChangeData &data) override;
    void updatePolish() override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    /// A round through some entries, and which of them is lit; one behind the last is the way out.
    struct Round {
        std::vector<ScanEntry> entries;
        std::size_t at = 0;
        bool armed = false; ///< The one control in it was pressed once and waits for the second.
    };

    bool takesKey(const QKeyEvent &key);
    bool takesTouch(QPointerEvent &touch);
    [[nodiscard]] bool isOnward(int key) const;
    [[nodiscard]] bool isLeftToAnAdult(const QPointF &point) const;

    void goOn();
    void press();
    void open(const ScanEntry &entry);
    void answer(QQuickItem *stop);
    void renewFirstRound();
    void rest();
    void show();
    void light(QQuickItem *stop, bool armed);
    void placeRing();

    QPointer<QQuickItem> m_root;
    QPointer<QQuickItem> m_lit;
    QPointer<QQuickWindow> m_watched;
    std::vector<Round> m_rounds; ///< The innermost last; none: nothing is lit.
    QRectF m_ring;
    QTimer m_step;
    QTimer m_pause; ///< The second of two presses that follow fast is ignored.
    QElapsedTimer m_since;
    int m_switches = 0;
    int m_stepMs = 2000;
    int m_onwardKey = 0;
    int m_leastTouchMs = 0;
    bool m_down = false;
    bool m_leftAlone = false;
};

} // namespace lidlark::design
