#pragma once

#include "tests/core/sync/shaky_storage.h"

#include <optional>

namespace lidlark::test {

/// The battery is dead.
struct PowerLoss {
};

/// A storage on the way to which the phone dies: before the call of a number, or right after it,
/// when all is done and nobody hears of it.
class PowerlessStorage final : public sync::Storage
{
private:
    template <class Call> auto lived(Call call) -> decltype(call())
    {
        const bool now = m_call && (*m_call)-- == 0;
        if (now && !m_after)
            throw PowerLoss();
        auto answer = call();
        if (now)
            throw PowerLoss();
        return answer;
    }

public:
    explicit PowerlessStorage(sync::Storage &inner) : m_inner(inner) {}

    /// @param call counted from now on, from 0. @param after it was done.
    void dieAt(int call, bool after)
    {
        m_call = call;
        m_after = after;
    }

    sync::Answer<bool> makeFolder(const std::string &folder) override
    {
        return lived([&] { return m_inner.makeFolder(folder); });
    }
    sync::Answer<std::vector<std::string>> list(const std::string &folder) override
    {
        return lived([&] { return m_inner.list(folder); });
    }
    sync::Answer<std::optional<std::uint64_t>> sizeOf(const sync::Place &place) override
    {
        return lived([&] { return m_inner.sizeOf(place); });
    }
    sync::Answer<std::optional<std::string>> get(const sync::Place &place) override
    {
        return lived([&] { return m_inner.get(place); });
    }
    sync::Answer<bool> put(const sync::Place &place, std::string_view bytes) override
    {
        return lived([&] { return m_inner.put(place, bytes); });
    }
    sync::Answer<Moved> move(const sync::Place &from, const std::string &name) override
    {
        return lived([&] { return m_inner.move(from, name); });
    }
    sync::Answer<bool> remove(const sync::Place &place) override
    {
        return lived([&] { return m_inner.remove(place); });
    }

private:
    sync::Storage &m_inner;
    std::optional<int> m_call;
    bool m_after = false;
};

} // namespace lidlark::test
