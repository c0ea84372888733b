#pragma once

#include "core/drawing/shelf.h"

#include <QDir>
#include <QFile>

#include <vector>

/// The drawings this repository ships, as data.
namespace shipped {

inline std::vector<lidlark::drawing::DrawingFile> drawingFiles()
{
    std::vector<lidlark::drawing::DrawingFile> files;
    for (const lidlark::drawing::Kind kind : lidlark::drawing::kinds) {
        const std::string_view folder = lidlark::drawing::folderOf(kind);
        const QDir dir(qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/assets/drawings/" +
                       QString::fromUtf8(folder.data(), static_cast<qsizetype>(folder.size())));
        for (const QFileInfo &info : dir.entryInfoList({"*.yaml"}, QDir::Files, QDir::Name)) {
            QFile file(info.filePath());
            if (file.open(QIODevice::ReadOnly))
                files.push_back(
                    {kind, info.completeBaseName().toStdString(), file.readAll().toStdString()});
        }
    }
    return files;
}

inline lidlark::drawing::Shelf drawings()
{
    return lidlark::drawing::Shelf(drawingFiles());
}

} // namespace shipped
