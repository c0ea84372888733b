#pragma once

#include "palette.h"
#include "theme_choices.h"

#include <QtGui/QColor>

namespace lidlark::design {

/// The colours of the look in force, for QML. What each is for: palette.h.
class ThemeColours : public lidlark::design::ThemeChoices
{
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(lidlark::design::ThemeChoices::Scheme scheme READ scheme WRITE setScheme NOTIFY
                   coloursChanged FINAL)
    Q_PROPERTY(lidlark::design::ThemeChoices::Place place READ place WRITE setPlace NOTIFY
                   coloursChanged FINAL)
    Q_PROPERTY(QColor sheet READ sheet NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor card READ card NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor cardEdge READ cardEdge NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor edge READ edge NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor edgeLow READ edgeLow NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor line READ line NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor ink READ ink NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor inkSoft READ inkSoft NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor picture READ picture NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor pictureText READ pictureText NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor pictureSoft READ pictureSoft NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor tileEdge READ tileEdge NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor tint READ tint NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor drawingInk READ drawingInk NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor drawingPaper READ drawingPaper NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor slip READ slip NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor slipText READ slipText NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor slipSoft READ slipSoft NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor safety READ safety NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor safetyText READ safetyText NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor cloth READ cloth NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor clothText READ clothText NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor weave READ weave NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor stitch READ stitch NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor lining READ lining NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor well READ well NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor wellText READ wellText NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor wellEdge READ wellEdge NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor accent READ accent NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor chosen READ chosen NOTIFY coloursChanged FINAL)
    Q_PROPERTY(QColor chosenText READ chosenText NOTIFY coloursChanged FINAL)
    Q_PROPERTY(qreal cardEdgeWidth READ cardEdgeWidth NOTIFY coloursChanged FINAL)
    Q_PROPERTY(qreal tileEdgeWidth READ tileEdgeWidth NOTIFY coloursChanged FINAL)
    Q_PROPERTY(qreal lineWidth READ lineWidth NOTIFY coloursChanged FINAL)
public:
    explicit ThemeColours(QObject *parent = nullptr);

    Scheme scheme() const { return m_scheme; }
    void setScheme(Scheme scheme);
    Place place() const { return m_place; }
    void setPlace(Place place);

    QColor sheet() const { return m_palette.sheet; }
    QColor card() const { return m_palette.card; }
    QColor cardEdge() const { return m_palette.cardEdge; }
    QColor edge() const { return m_palette.edge; }
    QColor edgeLow() const { return m_palette.edgeLow; }
    QColor line() const { return m_palette.line; }
    QColor ink() const { return m_palette.ink; }
    QColor inkSoft() const { return m_palette.inkSoft; }
    QColor picture() const { return m_palette.picture; }
    QColor pictureText() const { return m_palette.pictureText; }
    QColor pictureSoft() const { return m_palette.pictureSoft; }
    QColor tileEdge() const { return m_palette.tileEdge; }
    QColor tint() const { return m_palette.tint; }
    QColor drawingInk() const { return m_palette.drawingInk; }
    QColor drawingPaper() const { return m_palette.drawingPaper; }
    QColor slip() const { return m_palette.slip; }
    QColor slipText() const { return m_palette.slipText; }
    QColor slipSoft() const { return m_palette.slipSoft; }
    QColor safety() const { return m_palette.safety; }
    QColor safetyText() const { return m_palette.safetyText; }
    QColor cloth() const { return m_palette.cloth; }
    QColor clothText() const { return m_palette.clothText; }
    QColor weave() const { return m_palette.weave; }
    QColor stitch() const { return m_palette.stitch; }
    QColor lining() const { return m_palette.lining; }
    QColor well() const { return m_palette.well; }
    QColor wellText() const { return m_palette.wellText; }
    QColor wellEdge() const { return m_palette.wellEdge; }
    QColor accent() const { return m_palette.accent; }
    QColor chosen() const { return m_palette.chosen; }
    QColor chosenText() const { return m_palette.chosenText; }
    /// px. A quiet edge is a hair; where contrast is high every edge is a firm line.
    qreal cardEdgeWidth() const { return m_scheme == HighContrast ? 2.0 : 1.0; }
    qreal tileEdgeWidth() const { return m_scheme == HighContrast ? 2.0 : 1.5; }
    qreal lineWidth() const { return m_scheme == HighContrast ? 2.0 : 1.5; }

signals:
    void coloursChanged();

private:
    void choose(Scheme scheme, Place place);

    Scheme m_scheme = Light;
    Place m_place = Home;
    Palette m_palette;
};

} // namespace lidlark::design
