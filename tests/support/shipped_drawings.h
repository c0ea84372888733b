#pragma once

#include "core/drawing/shelf.h"

#include <QDir>
#include <QFile>

#include <vector>

/// The drawings this repository ships, as data.
namespace shipped {

inline std::vector<lidlark::drawing::DrawingFile> drawingFiles()
{
    using lidlark::drawing::Kind;
    std::vector<lidlark::drawing::DrawingFile> files;
    for (const auto &[kind, folder] :
         {std::pair{Kind::Hand, "hands"}, std::pair{Kind::Part, "parts"},
          std::pair{Kind::Item, "items"}, std::pair{Kind::Scene, "scenes"}}) {
        const QDir dir(qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/assets/drawings/" + folder);
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
