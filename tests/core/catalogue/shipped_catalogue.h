#pragma once

#include "core/catalogue/catalogue.h"

#include <QDir>
#include <QFile>
#include <QStringList>

#include <map>
#include <vector>

/// The catalogue this repository ships, and the copy of the table it was written from.
namespace shipped {

using namespace lidlark::catalogue;

inline QString source(const QString &path)
{
    return qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/" + path;
}

inline std::vector<SourceFile> filesIn(const QString &folder)
{
    std::vector<SourceFile> files;
    const QDir dir(source("assets/catalogue/" + folder));
    for (const QString &name : dir.entryList({"*.yaml"}, QDir::Files, QDir::Name)) {
        QFile file(dir.filePath(name));
        if (file.open(QIODevice::ReadOnly))
            files.push_back({(folder + "/" + name).toStdString(), file.readAll().toStdString()});
    }
    return files;
}

inline Catalogue catalogue()
{
    return load(filesIn("items"), filesIn("activities"));
}

/// Splits one line of the table: commas separate, quotes hold a field together (RFC 4180).
inline QStringList fieldsOf(const QString &line)
{
    QStringList fields{{}};
    bool quoted = false;
    for (const QChar letter : line) {
        if (letter == '"')
            quoted = !quoted;
        else if (letter == ',' && !quoted)
            fields.append(QString());
        else
            fields.last() += letter;
    }
    return fields;
}

/// One row of the table, its fields by their names.
using Row = std::map<QString, QString>;

inline std::vector<Row> rowsOf(const QString &table)
{
    QFile file(source(table));
    std::vector<Row> rows;
    if (!file.open(QIODevice::ReadOnly))
        return rows;
    const QStringList lines = QString::fromUtf8(file.readAll()).remove('\r').trimmed().split('\n');
    const QStringList names = fieldsOf(lines.first());
    for (const QString &line : lines.mid(1)) {
        const QStringList fields = fieldsOf(line);
        Row row;
        for (int i = 0; i < names.size(); ++i)
            row[names[i]] = fields.value(i);
        rows.push_back(row);
    }
    return rows;
}

inline std::vector<Row> firstEighty()
{
    return rowsOf("tests/data/first_eighty.csv");
}

/// Item ids ("eyes", "~tray") of names in the tables' Items columns (activities.md 1.3, 4 and 5).
inline QString itemIdOf(const QString &tableName)
{
    static const std::map<QString, QString> ids{
        {"lacing card", "card"}, {"short crayons", "crayons"}, {"rubber bands", "bands"},
        {"slit ball", "ball"},   {"resistance band", "rband"}, {"pom-poms", "pompoms"},
        {"~soft toy", "~toy"}};
    const auto found = ids.find(tableName);
    return found == ids.end() ? tableName : found->second;
}

} // namespace shipped
