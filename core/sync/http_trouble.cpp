#include "core/sync/http_trouble.h"

namespace lidlark::sync {

Trouble troubleOf(HttpFault fault)
{
    switch (fault) {
    case HttpFault::NoAnswer:
    case HttpFault::CutShort:
    case HttpFault::Stopped:
        return Trouble::Unreachable;
    case HttpFault::NotTrusted:
        return Trouble::NotTrusted;
    case HttpFault::NotHttp:
    case HttpFault::TooLarge:
    case HttpFault::Elsewhere:
        break;
    }
    return Trouble::Odd;
}

Trouble troubleOfStatus(long status)
{
    switch (status) {
    case 401: // not, or wrongly, logged in
    case 403: // forbidden
    case 407: // a proxy wants to know who asks
        return Trouble::Refused;
    case 423:
        return Trouble::Locked;
    case 507: // insufficient storage
        return Trouble::Full;
    case 408: // waited too long for the request
    case 425: // too early
    case 429: // too many requests
        return Trouble::Unreachable;
    case 501: // the method is not there, now or later
    case 505: // nor this HTTP
        return Trouble::Odd;
    default:
        return status >= 500 && status <= 599 ? Trouble::Unreachable : Trouble::Odd;
    }
}

Trouble troubleOf(const HttpAnswer &answer)
{
    return answer.fault ? troubleOf(*answer.fault) : troubleOfStatus(answer.status);
}

} // namespace lidlark::sync
