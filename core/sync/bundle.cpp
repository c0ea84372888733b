#include "core/sync/bundle.h"

#include "core/base/digest.h"
#include "core/crypto/bytes.h"
#include "core/sync/segment.h"

#include <algorithm>
#include <cstdint>

namespace lidlark::sync {

namespace {

constexpr std::string_view magic = "LARKBND"; // and the format number
constexpr std::uint8_t bundleFormat = 1;
constexpr std::size_t numberSize = 4;
constexpr std::size_t headSize = magic.size() + 1 + numberSize;
constexpr std::size_t smallestBundle = headSize + std::tuple_size_v<Digest>;

bool isPlain(std::string_view name)
{
    return !name.empty() && name.size() <= longestName && name.front() != '.' &&
           name.find_first_not_of("0123456789abcdef.") == std::string_view::npos;
}

void putNumber(std::string &bytes, std::size_t number)
{
    for (std::size_t byte = numberSize; byte-- > 0;)
        bytes.push_back(static_cast<char>(number >> (8U * byte) & 0xFFU));
}

void putName(std::string &bytes, std::string_view name)
{
    bytes.push_back(static_cast<char>(name.size()));
    bytes += name;
}

/// Takes a bundle apart from its front. What is not there reads as empty, and the whole as broken.
class Entries
{
public:
    explicit Entries(std::string_view bytes) : m_bytes(bytes) {}

    std::string_view take(std::size_t size)
    {
        m_broken = m_broken || size > m_bytes.size();
        if (m_broken)
            return {};
        const std::string_view taken = m_bytes.substr(0, size);
        m_bytes.remove_prefix(size);
        return taken;
    }
    std::size_t number(std::size_t size = numberSize)
    {
        std::size_t number = 0;
        for (const char byte : take(size))
            number = number << 8U | static_cast<std::uint8_t>(byte);
        return number;
    }
    std::string name() { return std::string(take(number(1))); }
    [[nodiscard]] bool broken() const { return m_broken; }
    [[nodiscard]] bool atEnd() const { return m_bytes.empty(); }

private:
    std::string_view m_bytes;
    bool m_broken = false;
};

std::optional<BundleFault> wrongOutside(std::string_view bytes)
{
    if (bytes.size() > largestBundle)
        return BundleFault::TooLarge;
    if (bytes.size() <= magic.size() || !bytes.starts_with(magic))
        return BundleFault::Foreign;
    const auto format = static_cast<std::uint8_t>(bytes[magic.size()]);
    if (format != bundleFormat)
        return format > bundleFormat ? BundleFault::Newer : BundleFault::Foreign;
    if (bytes.size() < smallestBundle)
        return BundleFault::Torn;
    const std::size_t end = bytes.size() - std::tuple_size_v<Digest>;
    return crypto::textOf(blake2b(bytes.substr(0, end))) == bytes.substr(end)
               ? std::nullopt
               : std::optional(BundleFault::Torn);
}

} // namespace

std::optional<std::string> bundleOf(const Bundle &bundle)
{
    if (bundle.size() > mostInBundle)
        return std::nullopt;
    std::string bytes(magic);
    bytes.push_back(static_cast<char>(bundleFormat));
    putNumber(bytes, bundle.size());
    for (const auto &[place, file] : bundle) {
        if (!isPlain(place.folder) || !isPlain(place.name) || file.size() > largestSegment ||
            bytes.size() + file.size() > largestBundle)
            return std::nullopt;
        putName(bytes, place.folder);
        putName(bytes, place.name);
        putNumber(bytes, file.size());
        bytes += file;
    }
    bytes += crypto::textOf(blake2b(bytes));
    return bytes.size() <= largestBundle ? std::optional(std::move(bytes)) : std::nullopt;
}

std::variant<Bundle, BundleFault> bundleFrom(std::string_view bytes)
{
    if (const auto fault = wrongOutside(bytes))
        return *fault;
    bytes.remove_suffix(std::tuple_size_v<Digest>);
    Entries entries(bytes.substr(magic.size() + 1));
    const std::size_t count = entries.number();
    if (count > mostInBundle)
        return BundleFault::TooLarge;
    Bundle bundle;
    for (std::size_t i = 0; i < count && !entries.broken(); ++i) {
        Place place;
        place.folder = entries.name();
        place.name = entries.name();
        const std::size_t size = entries.number();
        if (size > largestSegment)
            return BundleFault::TooLarge;
        // In their order, none twice: one spelling for one bundle.
        if (!isPlain(place.folder) || !isPlain(place.name) ||
            (!bundle.empty() && place <= bundle.rbegin()->first))
            return BundleFault::Torn;
        bundle.emplace_hint(bundle.end(), std::move(place), entries.take(size));
    }
    if (entries.broken() || !entries.atEnd())
        return BundleFault::Torn;
    return bundle;
}

} // namespace lidlark::sync
