#pragma once

#include <string>
#include <utility>
#include <variant>

namespace lidlark {

/// What went wrong, in a form that code can choose by. The sentence a person reads is made in
/// `core/wording` from the code and the detail.
enum class ErrorCode {
    NotFound,        ///< The thing asked for does not exist. Detail: what.
    Invalid,         ///< A value is outside what its field allows. Detail: "field: reason".
    Unreadable,      ///< A file is torn, foreign, or not what its name says. Detail: file.
    Unwritable,      ///< Storage refused: read-only, full, no permission. Detail: file.
    NewerSchema,     ///< The store was written by a later Lidlark. Detail: version.
    Busy,            ///< Another program holds the store. Detail: file.
    ClockUnset,      ///< The device's clock is outside 2020 to 2099. Detail: the date it shows.
    BeforeBirth,     ///< A date lies before the child's birth. Detail: the date.
    AlreadyAnswered, ///< The question was closed before. Detail: by whom.
    NotAllowed,      ///< This person's part in the crew does not go so far. Detail: what.
    AccessEnded      ///< A guest's invitation is over. Detail: its last day.
};

struct Error {
    ErrorCode code;
    std::string detail; ///< For the sentence and the log; never shown alone.
    bool operator==(const Error &) const = default;
};

/// A value, or the reason why there is none. C++23's std::expected is not in GCC 12.
template <class T> class [[nodiscard]] Result
{
public:
    Result(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    Result(Error error) : m_state(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }

    T &operator*() & { return std::get<0>(m_state); }
    const T &operator*() const & { return std::get<0>(m_state); }
    T &&operator*() && { return std::get<0>(std::move(m_state)); }
    T *operator->() { return &std::get<0>(m_state); }
    const T *operator->() const { return &std::get<0>(m_state); }

    [[nodiscard]] const Error &error() const { return std::get<1>(m_state); }

private:
    std::variant<T, Error> m_state;
};

/// Success without a value.
struct Done {
    bool operator==(const Done &) const = default;
};
using Outcome = Result<Done>;

} // namespace lidlark
