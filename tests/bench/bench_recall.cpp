#include "core/store/clinic_repository.h"
#include "core/store/recording.h"
#include "core/usecase/recall_lot.h"

#include "tests/support/clinic.h"

#include <sqlite3.h>

#include <chrono>
#include <cstdio>
#include <filesystem>

using namespace lidlark;
using namespace lidlark::test;

namespace {

constexpr int boxes = 10'000; ///< Far more than a therapist ever has at once.
constexpr int times = 200;    ///< Each way, in turns, so that both meet the same machine.

double secondsSince(std::chrono::steady_clock::time_point start)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// Every hundredth box has the lot that is looked for.
std::string lotOf(int box, const std::string &item)
{
    return item + (box % 100 == 0 ? "-77" : "-" + std::to_string(box % 90 + 100));
}

bool issueAll(Phone &phone)
{
    auto recording = store::Recording::begin(phone.database, phone.device, phone.clock);
    for (int box = 0; recording && box < boxes; ++box) {
        workbench::StatusSaid said;
        said.box = "K" + std::to_string(box);
        said.step = workbench::BoxStep::Issued;
        said.day = *dayFrom({2027, 1, 4});
        said.to = "Child " + std::to_string(box);
        for (const char *item : {"bands", "dough", "eyes", "pegs", "scissors"}) {
            said.pieces[{item}] = 1;
            said.lots[{item}] = {lotOf(box, item)};
        }
        if (!recording->say(store::clinicLane, journal::Kind::BoxStatus, workbench::fieldsOf(said))
                 .ok())
            return false;
    }
    return recording && recording->commit().ok();
}

/// The same rows by SQLite alone, on the same file.
int bareRows(sqlite3 *database)
{
    sqlite3_stmt *query = nullptr;
    sqlite3_prepare_v2(database,
                       "SELECT l.item, l.box, l.written, l.whose, s.standing, s.day "
                       "FROM lot_in_box AS l JOIN box_state AS s ON s.box = l.box "
                       "WHERE l.lot = 'EYES77' ORDER BY l.box",
                       -1, &query, nullptr);
    int rows = 0;
    while (sqlite3_step(query) == SQLITE_ROW)
        ++rows;
    sqlite3_finalize(query);
    return rows;
}

} // namespace

/// A recall among 10,000 boxes (job.md T15: under five seconds) beside a bare SQLite query of the
/// same rows. Not a test: it prints what it measured.
int main()
{
    const std::string file =
        (std::filesystem::temp_directory_path() / "lidlark-bench-recall.lidlark").string();
    std::filesystem::remove(file);
    auto morven = packer("Morven");
    morven->database = *store::Database::open(file);
    auto start = std::chrono::steady_clock::now();
    if (!issueAll(*morven))
        return 1;
    std::printf("%d boxes handed over in %.2f s\n", boxes, secondsSince(start));
    sqlite3 *bare = nullptr;
    if (sqlite3_open(file.c_str(), &bare) != SQLITE_OK)
        return 1;
    usecase::Workplace workplace = morven->workplace();
    double ours = 0;
    double theirs = 0;
    std::size_t found = 0;
    int rows = 0;
    for (int i = 0; i < times; ++i) {
        start = std::chrono::steady_clock::now();
        const auto recalled = usecase::recallLot(workplace, "eyes 77");
        ours += secondsSince(start);
        start = std::chrono::steady_clock::now();
        rows = bareRows(bare);
        theirs += secondsSince(start);
        found = recalled ? recalled->size() : 0;
    }
    sqlite3_close(bare);
    std::filesystem::remove(file);
    std::printf("recall: %zu boxes in %.3f ms; bare SQLite: %d rows in %.3f ms; ratio %.2f\n",
                found, ours / times * 1000, rows, theirs / times * 1000, ours / theirs);
    return found == boxes / 100 && rows == boxes / 100 ? 0 : 1;
}
