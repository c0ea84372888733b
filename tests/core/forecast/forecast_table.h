#pragma once

#include <QByteArray>
#include <QFile>
#include <QString>

#include <cmath>
#include <vector>

/// The tables of long-digit values in tests/data/forecast; their first line says how they were
/// made.
namespace forecast_table {

using Row = std::vector<double>;

/// Numbers of each line, in the order of the columns; empty when the file is not there.
inline std::vector<Row> rows(const QString &name)
{
    QFile file(qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/tests/data/forecast/" + name);
    std::vector<Row> rows;
    if (!file.open(QIODevice::ReadOnly))
        return rows;
    file.readLine(); // how it was made
    file.readLine(); // names of the columns
    while (!file.atEnd()) {
        Row row;
        for (const QByteArray &cell : file.readLine().trimmed().split(','))
            row.push_back(cell.toDouble());
        rows.push_back(row);
    }
    return rows;
}

inline QByteArray shown(const Row &row)
{
    QByteArray text;
    for (const double value : row)
        text += QByteArray::number(value, 'g', 17) + ' ';
    return text;
}

/// How far @p value is from @p right, as a part of it.
inline double offBy(double value, double right)
{
    return right == value ? 0 : std::abs(value - right) / std::abs(right);
}

} // namespace forecast_table
