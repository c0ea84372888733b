#include "core/sync/bundle_of_crew.h"

#include "core/store/recording.h"
#include "core/store/segment_repository.h"
#include "core/sync/crew_book.h"
#include "core/sync/outbox.h"

namespace lidlark::sync {

Result<Bundle> bundleOfCrew(Post &post, const std::string &box)
{
    const auto today = store::todayOf(post.clock);
    const auto book = CrewBook::open(post, box);
    if (!today || !book)
        return today ? book.error() : today.error();
    if (const auto waiting = sealWaiting(post, *book, today->day); !waiting)
        return waiting.error();
    const auto rows = store::SegmentRepository(post.database).all(box);
    if (!rows)
        return rows.error();
    Bundle bundle;
    for (const store::SegmentRow &row : *rows) {
        const HeldEpoch *held = book->held(row.epoch);
        if (held != nullptr)
            bundle.emplace(Place{folderName(held->epoch, row.device),
                                 segmentName(held->epoch, row.device, row.sequence)},
                           row.bytes);
    }
    return bundle;
}

} // namespace lidlark::sync
