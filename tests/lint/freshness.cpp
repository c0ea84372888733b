#include "tests/lint/freshness.h"

#include "core/base/digest.h"
#include "tests/arrows/mention.h"
#include "tests/arrows/own_file.h"
#include "tests/arrows/source_file.h"

#include <fstream>
#include <utility>
#include <vector>

namespace lidlark::lint {

Freshness::Freshness(std::filesystem::path root, std::filesystem::path cache, std::string settings)
    : m_root(std::move(root)), m_cache(std::move(cache)), m_settings(std::move(settings))
{
    std::filesystem::create_directories(m_cache);
    const auto files = arrows::readTree(m_root, {"core", "mobile", "tests"});
    const auto known = arrows::pathsOf(files);
    for (const arrows::SourceFile &file : files) {
        m_texts[file.path] = file.text;
        for (const arrows::Mention &mention : arrows::mentionsIn(file)) {
            if (const auto own = arrows::ownFile(file.path, mention.target, known))
                m_named[file.path].insert(*own);
        }
    }
}

bool Freshness::isKnownClean(const CompileCommand &command) const
{
    return std::filesystem::exists(markOf(command));
}

void Freshness::markClean(const CompileCommand &command) const
{
    std::ofstream(markOf(command)) << command.file.string() << '\n';
}

std::filesystem::path Freshness::markOf(const CompileCommand &command) const
{
    std::string all = m_settings + '\0' + command.flags;
    for (const std::string &path : closureOf(command.file.lexically_relative(m_root).string())) {
        const auto text = m_texts.find(path);
        all += '\0' + path + '\0' + (text == m_texts.end() ? std::string() : text->second);
    }
    return m_cache / hexOf(blake2b(all));
}

std::set<std::string> Freshness::closureOf(const std::string &path) const
{
    std::set<std::string> closure{path};
    std::vector<std::string> ahead{path};
    while (!ahead.empty()) {
        const auto named = m_named.find(ahead.back());
        ahead.pop_back();
        if (named == m_named.end())
            continue;
        for (const std::string &next : named->second) {
            if (closure.insert(next).second)
                ahead.push_back(next);
        }
    }
    return closure;
}

} // namespace lidlark::lint
