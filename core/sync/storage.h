#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lidlark::sync {

/// Why a storage did not do what it was asked.
enum class Trouble {
    Unreachable, ///< No answer, or one that was cut short: try again later.
    NotTrusted,  ///< The server's certificate is not trusted: nothing was sent, and it may be
                 ///< another.
    Refused,     ///< It does not let this phone in.
    Full,        ///< There is no room left.
    Locked,      ///< Somebody holds the file for now: try again later.
    Odd          ///< It answered in a way that nobody can go on from.
};

/// An answer, or why there is none.
template <class T> using Answer = std::variant<T, Trouble>;

/// The trouble in an answer; nothing where there is none.
template <class T> std::optional<Trouble> troubleIn(const Answer<T> &answer)
{
    const auto *trouble = std::get_if<Trouble>(&answer);
    return trouble != nullptr ? std::optional(*trouble) : std::nullopt;
}

/// A file on a storage: the folder of one device, and a name in it, of [0-9a-f.] alone.
struct Place {
    std::string folder;
    std::string name;

    auto operator<=>(const Place &) const = default;
};

/// Any place that keeps files: a folder, a server, a stick. It is not trusted: whatever it gives is
/// verified by whoever reads it. Each call may be cut off and asked again.
class Storage
{
public:
    enum class Moved {
        Done,
        Taken ///< There is something under the name already; nothing was changed.
    };

    Storage() = default;
    Storage(const Storage &) = delete;
    Storage &operator=(const Storage &) = delete;
    virtual ~Storage() = default;

    /// Whether or not it was there before.
    virtual Answer<bool> makeFolder(const std::string &folder) = 0;
    /// Names in a folder; none where there is no such folder.
    virtual Answer<std::vector<std::string>> list(const std::string &folder) = 0;
    /// @returns nothing inside where there is no such file.
    virtual Answer<std::optional<std::uint64_t>> sizeOf(const Place &place) = 0;
    virtual Answer<std::optional<std::string>> get(const Place &place) = 0;
    /// Under a name that nobody reads yet. Bytes that were kept when it answers are on the disk.
    virtual Answer<bool> put(const Place &place, std::string_view bytes) = 0;
    /// Within a folder, as a whole or not at all, and never over something else.
    virtual Answer<Moved> move(const Place &from, const std::string &name) = 0;
    /// Whether or not it was there.
    virtual Answer<bool> remove(const Place &place) = 0;
};

} // namespace lidlark::sync
