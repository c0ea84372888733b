#include "core/sync/squeeze.h"

#include "core/crypto/bytes.h"

#include <zlib.h>

namespace lidlark::sync {

namespace {

Bytef *into(std::string &text)
{
    return reinterpret_cast<Bytef *>(text.data());
}

} // namespace

std::string squeezed(std::string_view text)
{
    uLongf size = compressBound(text.size());
    std::string bytes(size, '\0');
    compress2(into(bytes), &size, crypto::bytesOf(text), text.size(), Z_BEST_COMPRESSION);
    bytes.resize(size);
    return bytes;
}

std::optional<std::string> unsqueezed(std::string_view bytes, std::size_t size)
{
    std::string text(size, '\0');
    uLongf written = size;
    uLong read = bytes.size();
    const int status = uncompress2(into(text), &written, crypto::bytesOf(bytes), &read);
    const bool whole = status == Z_OK && written == size && read == bytes.size();
    return whole ? std::optional(std::move(text)) : std::nullopt;
}

} // namespace lidlark::sync
