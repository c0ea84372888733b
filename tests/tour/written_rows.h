#pragma once

#include "core/store/database.h"

#include <QRegularExpression>
#include <QStringList>

namespace lidlark::test {

/// All that a store holds of check-ins and of the sitting they belong to, a line a row, from
/// whatever table it lies in. Random names are masked, as two evenings never share them.
inline QStringList rowsAboutCheckIns(const QString &file)
{
    auto database = store::Database::openExisting(file.toStdString());
    QStringList rows;
    QStringList tables;
    if (auto names = database->prepare("SELECT name FROM sqlite_master WHERE type = 'table'"))
        for (auto row = names->step(); row && *row; row = names->step())
            tables.append(QString::fromStdString(names->text(0)));
    for (const QString &table : std::as_const(tables)) {
        auto query = database->prepare("SELECT * FROM \"" + table.toStdString() + "\"");
        for (auto row = query->step(); row && *row; row = query->step()) {
            QStringList line{table};
            for (int column = 0; column < query->columns(); ++column)
                line.append(QString::fromStdString(query->text(column)));
            rows.append(line.join(u' '));
        }
    }
    static const QRegularExpression about(QStringLiteral("check-?_?in|sitting"));
    rows = rows.filter(about);
    static const QRegularExpression random(QStringLiteral("\\b(?=[0-9]*[a-f])[0-9a-f]{12,64}\\b"));
    rows.replaceInStrings(random, QStringLiteral("<random>"));
    return rows;
}

/// When everything in the store was written, check-ins and all else, as the store tells it.
inline QStringList momentsIn(const QString &file)
{
    QStringList moments;
    auto database = store::Database::open(file.toStdString());
    auto query = database->prepare("SELECT kind || ' ' || instant_ms || ' ' || logical || ' ' || "
                                   "day || ' ' || part FROM event ORDER BY lane, device, counter");
    while (*query->step())
        moments.append(QString::fromStdString(query->text(0)));
    auto own = database->prepare("SELECT key || ' ' || value FROM local_state "
                                 "WHERE key LIKE '%instant%' ORDER BY key");
    while (*own->step())
        moments.append(QString::fromStdString(own->text(0)));
    return moments;
}

} // namespace lidlark::test
