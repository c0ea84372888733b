#pragma once

#include <QImage>
#include <QList>
#include <QString>

#include <vector>

namespace lidlark::contact {

/// One drawing on a sheet: what it is called and its SVG text.
struct Cell {
    QString name;
    QByteArray svg;
};

/// A page of drawings as the smallest screen shows them: 96 px high, in grey, one row a thing.
struct Sheet {
    QString name; ///< "steps-01"; of the file, without ".png".
    std::vector<std::vector<Cell>> rows;
};

/// Every item, and every step of every activity in its order, from the shipped data. An activity is
/// a row: its steps are read beside each other.
std::vector<Sheet> sheetsOfShippedDrawings();

/// The page as a picture. It carries `digestOf` as text, so that a page older than its drawings is
/// found without comparing pixels, which differ between versions of Qt.
QImage rendered(const Sheet &sheet);

/// Changes with any drawing on the page, its name or its place.
QString digestOf(const Sheet &sheet);
/// What `rendered` wrote into a picture.
QString digestIn(const QImage &image);

QString folder(); ///< assets/drawings/contact

} // namespace lidlark::contact
