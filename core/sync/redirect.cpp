#include "core/sync/redirect.h"

#include "core/sync/web_url.h"

namespace lidlark::sync {

namespace {

std::string nameIn(std::string path)
{
    while (path.ends_with('/'))
        path.pop_back();
    return path.substr(path.find_last_of('/') + 1);
}

} // namespace

bool sendsOn(long status)
{
    return status == 301 || status == 302 || status == 307 || status == 308;
}

std::optional<std::string> followed(const std::string &from, const std::string &location)
{
    if (location.empty())
        return std::nullopt;
    const auto here = readUrl(from);
    const auto there = readReference(from, location);
    if (!here || !there || !there->isSameServerAs(*here) || there->hasMore ||
        !there->user.empty() || !there->password.empty() ||
        nameIn(there->path) != nameIn(here->path))
        return std::nullopt;
    return there->text();
}

} // namespace lidlark::sync
