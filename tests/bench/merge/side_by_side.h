#pragma once

#include "core/store/recording.h"
#include "core/sync/squeeze.h"
#include "tests/bench/merge/bare_table.h"
#include "tests/bench/merge/sealed_crew.h"
#include "tests/bench/merge/taken.h"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace lidlark::bench {

namespace fs = std::filesystem;
using journal::Event;

/// As many as an exchange takes in at once, about: 8 MB of text (core/sync/fetch.cpp).
inline constexpr std::size_t eventsAtOnce = 33'000;

inline double megabytesOf(const fs::path &file)
{
    return static_cast<double>(fs::file_size(file)) / 1e6;
}

/// All that is set side by side.
class Merge
{
public:
    Merge(std::size_t events, std::size_t eventsInFile, fs::path folder)
        : m_wanted(events), m_eventsInFile(eventsInFile), m_folder(std::move(folder))
    {
    }

    void prepare()
    {
        if (!m_crew.begin())
            throw std::runtime_error("the crew could not begin");
        const std::size_t before = m_crew.bytesOnStorage();
        const std::size_t filesBefore = m_crew.storage().files.size();
        YearsOfPlay years(m_crew.writers(), m_crew.upTo(), 2027);
        m_written = years.write(m_wanted, test::islandTime(5, 0, 0));
        if (!m_crew.publish(m_written, m_eventsInFile))
            throw std::runtime_error("it could not be sealed");
        m_sealed = m_crew.bytesOnStorage() - before;
        m_files = m_crew.storage().files.size() - filesBefore;
        m_crew.late().clock.moveTo(years.end() + msPerDay);
        for (const auto &[place, events] : m_written)
            m_events.insert(m_events.end(), events.begin(), events.end());
        m_rows = rowsOf(m_events);
        fs::remove(path("before"));
        if (!m_crew.late().database.run("VACUUM INTO '" + path("before").string() + "'"))
            throw std::runtime_error("the empty store could not be laid aside");
    }

    Taken bare() const
    {
        clear("bare");
        Stopwatch watch;
        Taken taken;
        {
            BareTable table(path("bare").string());
            for (std::size_t i = 0; i < m_rows.size(); i += eventsAtOnce)
                table.insert(std::span(m_rows).subspan(i, partFrom(i)));
            taken = watch.taken();
        }
        taken.megabytes = megabytesOf(path("bare"));
        return taken;
    }

    Taken intake()
    {
        fresh("intake");
        Taken taken;
        {
            auto database = store::Database::openExisting(path("intake").string());
            Stopwatch watch;
            for (std::size_t i = 0; i < m_events.size(); i += eventsAtOnce)
                takeIn(*database, std::span(m_events).subspan(i, partFrom(i)));
            taken = watch.taken();
        }
        taken.megabytes = megabytesOf(path("intake"));
        return taken;
    }

    Taken wholeWay()
    {
        fresh("whole");
        Taken taken;
        {
            auto database = store::Database::openExisting(path("whole").string());
            sync::Post post{*database, m_crew.late().clock, m_crew.late().entropy,
                            m_crew.late().device, m_crew.late().secret};
            Stopwatch watch;
            const auto report = sync::takeIn(post, SealedCrew::boxId, m_crew.storage());
            taken = watch.taken();
            if (!report || report->received != static_cast<int>(m_events.size()) ||
                !report->findings.empty())
                throw std::runtime_error(whatIsMissing(report));
        }
        taken.megabytes = megabytesOf(path("whole"));
        return taken;
    }

    void printBytes() const
    {
        std::size_t plain = 0;
        std::size_t deflated = 0;
        for (const auto &[place, events] : m_written) {
            std::string text;
            for (const Event &event : events)
                text.append(journal::canonicalText(event)).push_back('\n');
            plain += text.size();
            deflated += sync::squeezed(text).size();
        }
        const auto n = static_cast<double>(m_events.size());
        std::printf("\nBytes an event, %zu files of up to %zu events\n", m_files, m_eventsInFile);
        const auto line = [&](const char *what, std::size_t bytes) {
            std::printf("  %-52s %7.1f   %.3f of the text\n", what, static_cast<double>(bytes) / n,
                        static_cast<double>(bytes) / static_cast<double>(plain));
        };
        line("canonical text", plain);
        line("the same deflated, a lane of a device in one piece", deflated);
        line("sealed, as it lies on a storage", m_sealed);
    }

    /// A file of lines for each device, for other programs to merge.
    void writeLines() const
    {
        std::map<DeviceId, std::ofstream> files;
        for (const Event &event : m_events) {
            std::ofstream &file = files[event.device];
            if (!file.is_open())
                file.open(path("events-" + event.device.value));
            file << journal::canonicalText(event) << '\n';
        }
    }

    [[nodiscard]] std::size_t events() const { return m_events.size(); }

private:
    [[nodiscard]] std::string whatIsMissing(const Result<sync::Exchanged> &report) const
    {
        if (!report)
            return "not taken in: " + report.error().detail;
        return std::to_string(report->received) + " of " + std::to_string(m_events.size()) +
               " taken in, findings: " + std::to_string(report->findings.size());
    }
    [[nodiscard]] fs::path path(const std::string &name) const { return m_folder / name; }
    [[nodiscard]] std::size_t partFrom(std::size_t place) const
    {
        return std::min(eventsAtOnce, m_events.size() - place);
    }
    void clear(const std::string &name) const
    {
        for (const char *end : {"", "-wal", "-shm"})
            fs::remove(path(name + end));
    }
    void fresh(const std::string &name) const
    {
        clear(name);
        fs::copy_file(path("before"), path(name));
    }
    void takeIn(store::Database &database, std::span<const Event> events)
    {
        auto recording =
            store::Recording::begin(database, m_crew.late().device, m_crew.late().clock);
        for (const Event &event : events) {
            const auto fresh = recording->receive(event);
            if (!fresh || !*fresh)
                throw std::runtime_error("an event was not taken in");
        }
        if (!recording->commit())
            throw std::runtime_error("what was taken in could not be kept");
    }

    std::size_t m_wanted;
    std::size_t m_eventsInFile;
    fs::path m_folder;
    SealedCrew m_crew;
    Written m_written;
    std::vector<Event> m_events;
    std::vector<BareRow> m_rows;
    std::size_t m_sealed = 0;
    std::size_t m_files = 0;
};

} // namespace lidlark::bench
