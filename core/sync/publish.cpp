#include "core/sync/publish.h"

namespace lidlark::sync {

namespace {

/// What lies under the name.
enum class There { Nothing, Same, Other };

Answer<There> found(Storage &storage, const Place &place, std::string_view bytes)
{
    // The bytes themselves: an equal length alone proves nothing.
    const auto answer = storage.get(place);
    if (const auto trouble = troubleIn(answer))
        return *trouble;
    const auto &text = std::get<std::optional<std::string>>(answer);
    if (!text)
        return There::Nothing;
    return *text == bytes ? There::Same : There::Other;
}

Published publishedAs(There there)
{
    return there == There::Same ? Published::Done : Published::Taken;
}

/// @returns the trouble with which it could not be written whole.
std::optional<Trouble> writePart(Storage &storage, const Place &part, std::string_view bytes)
{
    const auto put = storage.put(part, bytes);
    if (const auto trouble = troubleIn(put))
        return trouble;
    const auto size = storage.sizeOf(part);
    if (const auto trouble = troubleIn(size))
        return trouble;
    const auto &there = std::get<std::optional<std::uint64_t>>(size);
    return there && *there == bytes.size() ? std::nullopt : std::optional(Trouble::Unreachable);
}

} // namespace

Answer<Published> publish(Storage &storage, const Place &place, std::string_view bytes,
                          Entropy &entropy)
{
    const auto folder = storage.makeFolder(place.folder);
    if (const auto trouble = troubleIn(folder))
        return *trouble;
    const auto before = found(storage, place, bytes);
    if (const auto trouble = troubleIn(before))
        return *trouble;
    if (std::get<There>(before) != There::Nothing)
        return publishedAs(std::get<There>(before));

    // A fresh name each time: a part that was cut off is never taken for this one. Half an id keeps
    // it a name that every server takes (isPlainName).
    const std::string fresh = entropy.freshId().substr(0, 16);
    const Place part{place.folder, place.name + "." + fresh + std::string(partEnd)};
    if (const auto trouble = writePart(storage, part, bytes))
        return *trouble;
    const auto moved = storage.move(part, place.name);
    if (const auto trouble = troubleIn(moved))
        return *trouble;
    if (std::get<Storage::Moved>(moved) == Storage::Moved::Done)
        return Published::Done;
    (void)storage.remove(part); // what is left is cleared at a later sync
    const auto after = found(storage, place, bytes);
    if (const auto trouble = troubleIn(after))
        return *trouble;
    if (std::get<There>(after) == There::Nothing)
        return Trouble::Unreachable;
    return publishedAs(std::get<There>(after));
}

} // namespace lidlark::sync
