#include "core/sync/segment_header.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

constexpr std::string_view magic = "LARKSEG"; // and the format number

/// The fields in their order on the storage: written and read alike.
template <class Header, class Visit> void eachField(Header &header, Visit visit)
{
    visit(header.crew);
    visit(header.lane);
    visit(header.epoch);
    visit(header.device);
    visit(header.sequence);
    visit(header.firstCounter);
    visit(header.previous);
    visit(header.events);
    visit(header.textSize);
    visit(header.nonce);
    visit(header.content);
}

class Writer
{
public:
    explicit Writer(std::string &bytes) : m_bytes(bytes) {}

    template <std::size_t Size> void put(const std::array<std::uint8_t, Size> &value)
    {
        m_bytes.append(reinterpret_cast<const char *>(value.data()), Size);
    }
    template <class Number> void put(Number value)
    {
        for (std::size_t byte = sizeof(Number); byte-- > 0;)
            m_bytes.push_back(static_cast<char>(value >> (8U * byte) & 0xFFU));
    }

private:
    std::string &m_bytes;
};

class Reader
{
public:
    explicit Reader(std::string_view bytes) : m_bytes(bytes) {}

    template <std::size_t Size> void take(std::array<std::uint8_t, Size> &value)
    {
        std::copy_n(m_bytes.begin(), Size, value.begin());
        m_bytes.remove_prefix(Size);
    }
    template <class Number> void take(Number &value)
    {
        value = 0;
        for (std::size_t byte = 0; byte < sizeof(Number); ++byte)
            value = static_cast<Number>(value << 8U | static_cast<std::uint8_t>(m_bytes[byte]));
        m_bytes.remove_prefix(sizeof(Number));
    }

private:
    std::string_view m_bytes;
};

} // namespace

std::string toBytes(const SegmentHeader &header)
{
    std::string bytes(magic);
    bytes.push_back(static_cast<char>(formatNumber));
    Writer writer(bytes);
    eachField(header, [&writer](const auto &field) { writer.put(field); });
    return bytes;
}

Beginning beginningOf(std::string_view bytes)
{
    if (bytes.size() <= magic.size() || !bytes.starts_with(magic))
        return Beginning::Foreign;
    const auto number = static_cast<std::uint8_t>(bytes[magic.size()]);
    if (number > formatNumber)
        return Beginning::Newer;
    return number == formatNumber && bytes.size() >= headerSize ? Beginning::Readable
                                                                : Beginning::Foreign;
}

std::optional<SegmentHeader> headerOf(std::string_view bytes)
{
    if (beginningOf(bytes) != Beginning::Readable)
        return std::nullopt;
    Reader reader(bytes.substr(magic.size() + 1));
    SegmentHeader header;
    eachField(header, [&reader](auto &field) { reader.take(field); });
    return header;
}

} // namespace lidlark::sync
