#pragma once

#include "core/sync/webdav_storage.h"
#include "tests/support/fault_proxy.h"

namespace samples {

using namespace lidlark::sync;
using lidlark::test::Asked;
using lidlark::test::Fault;
using lidlark::test::FaultProxy;

inline const Place place{"f0", "b2"};
using File = std::optional<std::string>;

inline ServerAddress addressOf(const FaultProxy &proxy)
{
    ServerAddress address;
    address.url = proxy.url() + "dav/crew/";
    return address;
}

/// A storage whose server is made up: it gives the same answer to all.
struct StandIn {
    explicit StandIn(const Fault &fault, HttpPatience patience = {}, TransferWatch watch = {})
        : proxy(0, [fault](const Asked &) { return fault; }),
          storage(addressOf(proxy), patience, std::move(watch))
    {
    }
    FaultProxy proxy;
    WebdavStorage storage;
};

} // namespace samples
