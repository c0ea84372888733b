#pragma once

#include <array>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace lidlark::bench {

/// Yjs and Automerge, where `npm ci --prefix tests/bench/merge_crdt` has brought them.
class CrdtLibraries
{
public:
    /// @param script the folder of merge.mjs. @param folder with a file of events for each device.
    CrdtLibraries(std::filesystem::path script, std::filesystem::path folder)
        : m_script(std::move(script)), m_folder(std::move(folder))
    {
    }

    static constexpr std::array<const char *, 4> kinds{"yjs map", "yjs array", "automerge map",
                                                       "automerge array"};

    [[nodiscard]] bool areThere() const
    {
        return std::filesystem::exists(m_script / "node_modules") && answerOf("--version");
    }
    /// A document for each device: not measured.
    [[nodiscard]] bool prepare() const { return answerOf(call("prepare", "")).has_value(); }

    struct Merged {
        double cpu = 0;  ///< Seconds.
        double wall = 0; ///< Seconds.
        double bytes = 0;
    };
    /// Joins the documents of all devices. @returns nothing where that failed.
    [[nodiscard]] std::optional<Merged> merge(const char *kind) const
    {
        Merged merged;
        const auto answer = answerOf(call("merge", kind));
        const bool read = answer && std::sscanf(answer->c_str(), "%lf %lf %lf", &merged.cpu,
                                                &merged.wall, &merged.bytes) == 3;
        return read ? std::optional(merged) : std::nullopt;
    }

private:
    [[nodiscard]] std::string call(const char *task, const char *kind) const
    {
        return (m_script / "merge.mjs").string() + " " + task + " " + m_folder.string() + " " +
               kind;
    }
    /// What node prints; nothing where it is not there or fails.
    static std::optional<std::string> answerOf(const std::string &arguments)
    {
        std::FILE *node = popen(("node " + arguments).c_str(), "r");
        if (node == nullptr)
            return std::nullopt;
        std::string text;
        for (int c = std::fgetc(node); c != EOF; c = std::fgetc(node))
            text.push_back(static_cast<char>(c));
        return pclose(node) == 0 ? std::optional(text) : std::nullopt;
    }

    std::filesystem::path m_script;
    std::filesystem::path m_folder;
};

} // namespace lidlark::bench
