#pragma once

#include "drawing_shelf.h"

#include <QtQml/qqmlregistration.h>
#include <QtQuick/QQuickPaintedItem>

namespace lidlark::design {

/// Shows a drawing of the app, crisp at any size, in the three colours it is given.
/// Never mirrors. A drawing that is missing shows as a dotted frame, so a gap is seen, not hidden.
class PaintedDrawing : public QQuickPaintedItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY nameChanged FINAL)
    Q_PROPERTY(Fit fit READ fit WRITE setFit NOTIFY fitChanged FINAL)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY nameChanged FINAL)
    Q_PROPERTY(
        qreal cornerRadius READ cornerRadius WRITE setCornerRadius NOTIFY cornerRadiusChanged FINAL)
    Q_PROPERTY(bool missing READ missing NOTIFY nameChanged FINAL)
    Q_PROPERTY(QColor inkColour READ inkColour WRITE setInkColour NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor tintColour READ tintColour WRITE setTintColour NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor paperColour READ paperColour WRITE setPaperColour NOTIFY coloursChanged FINAL)
public:
    enum Fit {
        Whole,  ///< All of it, its own shape kept.
        Middle, ///< The middle square whole, and as much beside it as there is room for.
        Cover   ///< Fills the item; what does not fit is cut off evenly.
    };
    Q_ENUM(Fit)

    explicit PaintedDrawing(QQuickItem *parent = nullptr);

    QString name() const { return m_name; }
    void setName(const QString &name);
    Fit fit() const { return m_fit; }
    void setFit(Fit fit);
    /// For a left-handed child: the drawing "<name>-left" where there is one.
    bool leftHanded() const { return m_leftHanded; }
    void setLeftHanded(bool leftHanded);
    /// px; for a drawing that runs up to the corners of a card.
    qreal cornerRadius() const { return m_cornerRadius; }
    void setCornerRadius(qreal radius);
    bool missing() const { return m_area.isEmpty() && !m_name.isEmpty(); }

    QColor inkColour() const { return m_colours.ink; }
    void setInkColour(const QColor &colour);
    QColor tintColour() const { return m_colours.tint; }
    void setTintColour(const QColor &colour);
    QColor paperColour() const { return m_colours.paper; }
    void setPaperColour(const QColor &colour);

    void paint(QPainter *painter) override;

signals:
    void nameChanged();
    void fitChanged();
    void cornerRadiusChanged();
    void coloursChanged();

private:
    void lookUp();
    void setPart(QColor DrawingColours::*part, const QColor &colour);
    QString shownName() const;
    QRectF window() const;

    QString m_name;
    Fit m_fit = Whole;
    bool m_leftHanded = false;
    qreal m_cornerRadius = 0.0;
    DrawingColours m_colours;
    QRectF m_area;
};

} // namespace lidlark::design
