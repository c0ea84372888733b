#pragma once

#include "theme_colours.h"
#include "type_roles.h"

#include <array>
#include <optional>

namespace lidlark::design {

/// The one place where the look is decided: colours (ThemeColours), type, space and motion.
/// Lengths are logical px, times are ms. Source of the values: reference/look/look.md.
class Theme : public lidlark::design::ThemeColours
{
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(qreal textScale READ textScale WRITE setTextScale NOTIFY typeChanged FINAL)
    Q_PROPERTY(bool arabicScript READ arabicScript WRITE setArabicScript NOTIFY typeChanged FINAL)
    Q_PROPERTY(bool largeText READ largeText NOTIFY typeChanged FINAL)
    Q_PROPERTY(int scriptRoom READ scriptRoom NOTIFY typeChanged FINAL)
    Q_PROPERTY(
        bool reducedMotion READ reducedMotion WRITE setReducedMotion NOTIFY motionChanged FINAL)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY leftHandedChanged FINAL)
    /// The child works with the left hand: drawings exchange helper and working hand.
    Q_PROPERTY(bool childLeftHanded MEMBER m_childLeftHanded NOTIFY childLeftHandedChanged FINAL)
    /// A phone lying down: height is dear.
    Q_PROPERTY(bool lowPage MEMBER m_lowPage NOTIFY lowPageChanged FINAL)
    Q_PROPERTY(qreal screenDotsPerMm READ screenDotsPerMm WRITE setScreenDotsPerMm NOTIFY
                   dotsPerMmChanged FINAL)
    Q_PROPERTY(qreal dotsPerMm READ dotsPerMm NOTIFY dotsPerMmChanged FINAL)
    Q_PROPERTY(int childGap READ childGap NOTIFY dotsPerMmChanged FINAL)

    Q_PROPERTY(int pressMs READ pressMs NOTIFY motionChanged FINAL)
    Q_PROPERTY(int pegMs READ pegMs NOTIFY motionChanged FINAL)
    Q_PROPERTY(int homeMs READ homeMs NOTIFY motionChanged FINAL)
    Q_PROPERTY(int pageMs READ pageMs NOTIFY motionChanged FINAL)
    Q_PROPERTY(int holdMs MEMBER m_holdMs CONSTANT FINAL)

    Q_PROPERTY(int touchTarget MEMBER m_touchTarget CONSTANT FINAL)
    Q_PROPERTY(int margin MEMBER m_margin CONSTANT FINAL)
    Q_PROPERTY(int childMargin MEMBER m_childMargin CONSTANT FINAL)
    Q_PROPERTY(int cardPadding MEMBER m_cardPadding CONSTANT FINAL)
    Q_PROPERTY(int gap MEMBER m_gap CONSTANT FINAL)
    Q_PROPERTY(int smallGap MEMBER m_smallGap CONSTANT FINAL)
    Q_PROPERTY(int chipGap MEMBER m_chipGap CONSTANT FINAL)
    Q_PROPERTY(int sectionGap MEMBER m_sectionGap CONSTANT FINAL)
    Q_PROPERTY(int radiusPaper MEMBER m_radiusPaper CONSTANT FINAL)
    Q_PROPERTY(int radiusTile MEMBER m_radiusTile CONSTANT FINAL)
    Q_PROPERTY(int radiusChip MEMBER m_radiusChip CONSTANT FINAL)
    Q_PROPERTY(int radiusTray MEMBER m_radiusTray CONSTANT FINAL)
    Q_PROPERTY(int radiusWell MEMBER m_radiusWell CONSTANT FINAL)
    Q_PROPERTY(int itemSmall MEMBER m_itemSmall CONSTANT FINAL)
    Q_PROPERTY(int itemLarge MEMBER m_itemLarge CONSTANT FINAL)
    Q_PROPERTY(int signSize MEMBER m_signSize CONSTANT FINAL)
    /// Least width of a window with two pages side by side, and the width of the first.
    Q_PROPERTY(int twoPanesWidth MEMBER m_twoPanesWidth CONSTANT FINAL)
    Q_PROPERTY(int boardWidth MEMBER m_boardWidth CONSTANT FINAL)
    Q_PROPERTY(int paperThickness MEMBER m_paperThickness CONSTANT FINAL)
public:
    explicit Theme(QObject *parent = nullptr);

    qreal textScale() const { return m_reading.textScale; }
    /// Held between 1 and 2.
    void setTextScale(qreal textScale);
    bool arabicScript() const { return m_reading.arabicScript; }
    void setArabicScript(bool arabicScript);
    /// From here on offers and pairs of buttons stack.
    bool largeText() const { return m_reading.textScale >= 1.5; }
    /// px that the taller lines of Naskh already leave between two lines of text.
    int scriptRoom() const { return m_reading.arabicScript ? 4 : 0; }

    bool reducedMotion() const { return m_reducedMotion; }
    void setReducedMotion(bool reducedMotion);
    bool leftHanded() const { return m_leftHanded; }
    void setLeftHanded(bool leftHanded);

    /// What the screen says of itself; 0 when it says nothing.
    qreal screenDotsPerMm() const { return m_screenDotsPerMm; }
    void setScreenDotsPerMm(qreal dotsPerMm);
    /// px for one mm: the screen's own, but never under the floor of a 320 x 568 phone.
    qreal dotsPerMm() const;
    /// px for @p millimetres, rounded up. Not re-read by a binding: use dotsPerMm there.
    Q_INVOKABLE int mm(qreal millimetres) const;
    /// Between two things a child presses: 4 mm, rounded down so that a small phone holds them all.
    int childGap() const { return static_cast<int>(4.0 * dotsPerMm()); }

    int pressMs() const { return moving(120); }
    int pegMs() const { return moving(180); }
    int homeMs() const { return moving(240); }
    int pageMs() const { return moving(200); }

    /// The cloth of another place than the one in force. @p scheme is only read, as below.
    Q_INVOKABLE QColor clothOf(Place place, Scheme scheme) const;
    /// Whether a role is bold unless asked otherwise.
    Q_INVOKABLE bool boldByRole(Role role) const;
    /// The style of a role in one of the two scripts. The scale is only read so that a binding
    /// notices its change.
    Q_INVOKABLE QFont font(Role role, bool bold, qreal textScale, bool arabicScript) const;
    Q_INVOKABLE qreal lineHeight(Role role, qreal textScale, bool arabicScript) const;
    Q_INVOKABLE qreal lift(Role role, qreal textScale, bool arabicScript) const;
    Q_INVOKABLE qreal trim(Role role, qreal textScale, bool arabicScript) const;

signals:
    void typeChanged();
    void motionChanged();
    void leftHandedChanged();
    void lowPageChanged();
    void childLeftHandedChanged();
    void dotsPerMmChanged();

private:
    int moving(int milliseconds) const { return m_reducedMotion ? 0 : milliseconds; }
    const TypeStyle &styleOf(Role role, bool bold, bool arabicScript) const;
    void read(const Reading &reading);

    Reading m_reading;
    bool m_reducedMotion = false;
    bool m_leftHanded = false;
    bool m_lowPage = false;
    bool m_childLeftHanded = false;
    qreal m_screenDotsPerMm = 0.0;
    /// By role, then regular and bold, each in both scripts; filled when first asked for.
    mutable std::array<std::array<std::optional<TypeStyle>, 4>, Number + 1> m_styles;

    int m_holdMs = 1200;
    int m_touchTarget = 48;
    int m_margin = 16;
    int m_childMargin = 12;
    int m_cardPadding = 12;
    int m_gap = 10;
    int m_smallGap = 4;
    int m_chipGap = 7;
    int m_sectionGap = 16;
    int m_twoPanesWidth = 900;
    int m_boardWidth = 380;
    int m_radiusPaper = 5;
    int m_radiusTile = 7;
    int m_radiusChip = 3;
    int m_radiusTray = 12;
    int m_radiusWell = 4;
    int m_itemSmall = 52;
    int m_itemLarge = 96;
    int m_signSize = 24;
    int m_paperThickness = 3;
};

} // namespace lidlark::design
