#pragma once

#include "tests/arrows/source_file.h"

#include <string>
#include <vector>

namespace lidlark::arrows {

/// One place where a file names another file or module.
struct Mention {
    enum class Form {
        Quoted,  ///< `#include "target"`
        Angled,  ///< `#include <target>`
        Module,  ///< `import target` in QML, and "…/Lidlark/Target/…" in a string
        Path,    ///< `import "target"` and other strings that begin with "../" in QML
        Unclear, ///< an #include of something else, such as a macro
    };
    Form form = Form::Unclear;
    int line = 0;
    std::string target;
    bool operator==(const Mention &) const = default;
};

/// What @p file names, in the order of lines. C++ files are read for includes, QML and JavaScript
/// files for imports; in both, a resource path of a QML module counts as an import of it, so that
/// a Loader cannot go where an import may not.
std::vector<Mention> mentionsIn(const SourceFile &file);

} // namespace lidlark::arrows
