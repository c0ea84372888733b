#pragma once

#include "ink_item.h"
#include "theme_choices.h"

namespace lidlark::design {

/// A strip of woven cloth: pinked upper edge, running stitch below it, the place's weave.
/// Between the teeth it is clear, so the page shows through. `colour` is the dye.
class ClothStrip : public lidlark::design::InkItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::design::ThemeChoices::Place place READ place WRITE setPlace NOTIFY
                   clothChanged FINAL)
    Q_PROPERTY(QColor weave READ weave WRITE setWeave NOTIFY clothChanged FINAL)
    Q_PROPERTY(QColor stitch READ stitch WRITE setStitch NOTIFY clothChanged FINAL)
public:
    using InkItem::InkItem;

    ThemeChoices::Place place() const { return m_place; }
    void setPlace(ThemeChoices::Place place);
    QColor weave() const { return m_weave; }
    void setWeave(const QColor &weave);
    QColor stitch() const { return m_stitch; }
    void setStitch(const QColor &stitch);

    void paint(QPainter *painter) override;

signals:
    void clothChanged();

private:
    ThemeChoices::Place m_place = ThemeChoices::Home;
    QColor m_weave;
    QColor m_stitch;
};

} // namespace lidlark::design
