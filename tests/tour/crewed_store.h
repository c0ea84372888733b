#pragma once

#include "core/sync/exchange.h"
#include "core/sync/folder_storage.h"
#include "core/sync/found_crew.h"
#include "core/sync/let_in.h"
#include "core/sync/secret_file.h"
#include "core/sync/share.h"
#include "core/sync/welcome.h"
#include "core/usecase/issue_box.h"
#include "tests/tour/open_app.h"

namespace lidlark::test {

/// A phone of a crew whose store lies in a file, so that the app can be opened on it; what it does
/// without its screen happens while the app is closed.
class CrewedStore
{
public:
    CrewedStore(QString file, const std::string &person, store::Role role, const HomeId &home)
        : m_file(std::move(file))
    {
        QFile::remove(m_file);
        QFile::remove(m_file + QStringLiteral(".keys"));
        auto database = store::Database::open(m_file.toStdString());
        (void)store::DeviceRepository(*database).setDevice({{"d-" + person}, person, role, home});
        (void)store::DeviceRepository(*database).setLocalState("crew.keys", "file");
    }

    [[nodiscard]] const QString &file() const { return m_file; }

    /// Does @p what with the phone in hand, at a moment.
    template <typename What> void at(const char *clock, What what)
    {
        auto database = store::Database::open(m_file.toStdString());
        StillClock now(*msFromText(clock));
        SeededEntropy entropy(m_file.toStdString() + std::to_string(++m_times));
        sync::SecretFile keeper(m_file.toStdString() + ".keys");
        auto opened = sync::openPost(*database, now, entropy, keeper);
        if (!opened)
            qFatal("no post");
        what(opened->post);
    }

    /// Hands over the box of @p child and founds its crew.
    bool found(const char *clock, const std::string &child, const std::string &box)
    {
        bool done = false;
        at(clock, [&](sync::Post &post) {
            usecase::Workplace workplace{post.database, realCatalogue(), post.clock, post.entropy,
                                         post.device};
            done = usecase::issueBox(workplace, familyOf(child)).ok() &&
                   sync::foundCrew(post, box).ok();
        });
        return done;
    }

    bool letIn(const char *clock, CrewedStore &other, const std::string &box)
    {
        bool done = false;
        at(clock, [&](sync::Post &mine) {
            other.at(clock, [&](sync::Post &theirs) {
                const auto welcome =
                    sync::letIn(mine, box, sync::memberOf(theirs.device, theirs.secret));
                if (!welcome)
                    return;
                const auto read =
                    sync::welcomeIn(sync::letterOf(*welcome, mine.entropy), theirs.secret);
                done = read && sync::settleIn(theirs, *read).ok();
            });
        });
        return done;
    }

    /// To the place that the crew shares and back. @returns whether it went without trouble.
    bool visit(const char *clock, const std::string &place, const std::string &box)
    {
        bool done = false;
        at(clock, [&](sync::Post &post) {
            sync::FolderStorage storage(place);
            const auto report = sync::exchange(post, box, storage);
            done = report && !report->trouble && report->findings.empty() && !report->out;
        });
        return done;
    }

private:
    QString m_file;
    int m_times = 0;
};

} // namespace lidlark::test
