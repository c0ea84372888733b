#include "core/sync/sealed_for_all.h"

#include "core/store/segment_repository.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

bool isVoid(const CrewBook &book, const Digest &epoch)
{
    return std::ranges::none_of(
        book.openings(), [&epoch](const crew::Opening &opening) { return opening.id == epoch; });
}

} // namespace

Result<std::uint64_t> sealedForAll(Post &post, const CrewBook &book, const journal::Lane &lane)
{
    store::SegmentRepository segments(post.database);
    const auto rows = segments.sealedOf(book.box(), lane, post.device.id);
    const auto last = segments.lastCounter(book.box(), lane, post.device.id);
    if (!rows || !last)
        return rows ? last.error() : rows.error();
    std::uint64_t before = 0; // what was sealed before those with the counter at hand
    std::uint64_t upTo = 0;
    for (const store::SegmentRow &row : *rows) {
        if (row.lastCounter > upTo) {
            before = upTo;
            upTo = row.lastCounter;
        }
        if (isVoid(book, row.epoch))
            return before;
    }
    return *last;
}

Outcome leaveVoidEpochs(Post &post, const CrewBook &book, const journal::Lane &lane)
{
    store::SegmentRepository segments(post.database);
    const auto rows = segments.sealedOf(book.box(), lane, post.device.id);
    if (!rows)
        return rows.error();
    for (const store::SegmentRow &row : *rows) {
        if (!isVoid(book, row.epoch))
            continue;
        if (Outcome done = segments.supersede(row.epoch, post.device.id); !done)
            return done;
    }
    return Done{};
}

} // namespace lidlark::sync
