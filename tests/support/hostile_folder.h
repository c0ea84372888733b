#pragma once

#include "core/base/digest.h"
#include "core/store/event_repository.h"
#include "core/sync/folder_storage.h"

#include <QDir>
#include <QTemporaryDir>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace lidlark::test {

/// A folder that a crew shares, and whose keeper does with the files what he likes.
class HostileFolder
{
public:
    using Files = std::map<sync::Place, std::string>;

    [[nodiscard]] sync::Storage &storage() { return m_storage; }

    [[nodiscard]] std::string read(const sync::Place &place)
    {
        const auto answer = m_storage.get(place);
        const auto *bytes = std::get_if<std::optional<std::string>>(&answer);
        return bytes != nullptr ? bytes->value_or("") : "";
    }
    void write(const sync::Place &place, std::string_view bytes) const
    {
        std::filesystem::create_directories(root() / place.folder);
        std::ofstream(root() / place.folder / place.name, std::ios::binary | std::ios::trunc)
            << bytes;
    }
    void remove(const sync::Place &place) { (void)m_storage.remove(place); }

    /// Everything that lies there.
    [[nodiscard]] Files files()
    {
        Files all;
        for (const auto &entry : std::filesystem::recursive_directory_iterator(root())) {
            if (!entry.is_regular_file())
                continue;
            const sync::Place place{entry.path().parent_path().filename().string(),
                                    entry.path().filename().string()};
            all[place] = read(place);
        }
        return all;
    }
    /// As if nothing but @p files had ever lain there.
    void setBackTo(const Files &files)
    {
        for (const auto &[place, bytes] : this->files())
            remove(place);
        for (const auto &[place, bytes] : files)
            write(place, bytes);
    }

private:
    [[nodiscard]] std::filesystem::path root() const { return m_folder.path().toStdString(); }

    /// In memory where that can be: each file that is brought waits for the disk.
    static QString roomFor()
    {
        const QDir memory(QStringLiteral("/dev/shm"));
        return (memory.exists() ? memory : QDir::temp()).filePath(QStringLiteral("hostile-XXXXXX"));
    }

    QTemporaryDir m_folder{roomFor()};
    sync::FolderStorage m_storage{m_folder.path().toStdString()};
};

/// What a phone keeps but for notes of its own (how far it has looked, which bytes it has fetched):
/// every event, every row folded from them, who is in the crew, and the keys handed to it.
inline std::string stateOf(store::Database &database, const std::set<std::string> &but = {})
{
    const auto rowsOf = [&database](const std::string &sql) {
        std::vector<std::string> rows;
        auto query = database.prepare(sql);
        if (!query)
            return std::vector<std::string>{"unreadable: " + sql};
        for (auto row = query->step(); row && *row; row = query->step()) {
            std::string &cells = rows.emplace_back();
            for (int column = 0; column < query->columns(); ++column)
                cells += query->text(column) + '\x1f';
        }
        std::ranges::sort(rows);
        return rows;
    };
    std::string state;
    for (std::string table : rowsOf("SELECT name FROM sqlite_master WHERE type = 'table'")) {
        table.pop_back();
        if (table == "segment" || table == "local_state" || but.contains(table))
            continue;
        state += table + '\n';
        for (const std::string &row : rowsOf("SELECT * FROM \"" + table + "\""))
            state += row + '\n';
    }
    return hexOf(blake2b(state));
}

/// What a store holds of one kind of lane, each event a line.
inline std::string eventsIn(store::Database &database, journal::LaneKind kind)
{
    std::string text;
    const auto events = store::EventRepository(database).all();
    for (const journal::Event &event : events ? *events : std::vector<journal::Event>())
        text += event.lane.kind == kind ? journal::canonicalText(event) + '\n' : "";
    return text;
}

} // namespace lidlark::test
