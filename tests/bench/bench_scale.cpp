// What sharing asks of a server: thirty days of an ordinary family over a real one, counted, and
// multiplied.
//
//   lidlark-bench-scale [DAYS]
//
// A real server on this machine (Apache, mod_dav_fs, TLS), real stores, seals and exchanges; every
// visit is a line of its own. Bytes are those on the wire, the greeting of TLS among them.

#include "core/sync/webdav_storage.h"
#include "tests/bench/scale/ordinary_family.h"
#include "tests/support/counting_storage.h"
#include "tests/support/cut_relay.h"
#include "tests/support/dav_server.h"

#include <cstdio>
#include <filesystem>

namespace {

using namespace lidlark;
using bench::OrdinaryFamily;
using test::StorageCounts;

constexpr double daysOfAYear = 365;
constexpr int familiesOfOne = 60;
constexpr int manyCrews = 10'000;

struct Cost {
    StorageCounts counts;
    std::uint64_t up = 0;
    std::uint64_t down = 0;
    int visits = 0;
    int troubles = 0;

    Cost &operator+=(const Cost &other)
    {
        counts += other.counts;
        up += other.up;
        down += other.down;
        visits += other.visits;
        troubles += other.troubles;
        return *this;
    }
};

using Costs = std::array<Cost, OrdinaryFamily::phones>;

Cost sumOf(const Costs &costs)
{
    Cost sum;
    for (const Cost &cost : costs)
        sum += cost;
    return sum;
}

/// A family that meets on a server.
class MeetingPlace
{
public:
    MeetingPlace(const test::DavServer &server, OrdinaryFamily &family)
        : m_root(server.root() / "family"), m_relay(server.port()), m_family(family)
    {
        sync::ServerAddress address = server.address();
        const std::size_t colon = address.url.rfind(':') + 1;
        address.url.replace(colon, address.url.find('/', colon) - colon,
                            std::to_string(m_relay.port()));
        m_address = sync::folderIn(address, "family");
    }

    Costs costs; ///< Since it was emptied last.

    void meet(std::size_t who)
    {
        const test::WireBytes before = m_relay.passed();
        Cost cost;
        {
            sync::WebdavStorage line(m_address);
            test::CountingStorage counted(line);
            const auto report = m_family.phone(who).exchange(OrdinaryFamily::box(), counted);
            const bool well =
                report.received >= 0 && !report.trouble && !report.out && !report.copied;
            cost = {counted.counts(), 0, 0, 1, well ? 0 : 1};
        }
        const test::WireBytes now = m_relay.passed();
        cost.up = now.toServer - before.toServer;
        cost.down = now.toPhone - before.toPhone;
        costs.at(who) += cost;
    }

    struct Lying {
        std::uint64_t files = 0;
        std::uint64_t folders = 0;
        std::uint64_t bytes = 0;
    };
    [[nodiscard]] Lying lying() const
    {
        Lying sum;
        for (const auto &entry : std::filesystem::recursive_directory_iterator(m_root)) {
            if (entry.path().string().find("/.DAV") != std::string::npos)
                continue; // Apache's own
            sum.folders += entry.is_directory() ? 1 : 0;
            sum.files += entry.is_regular_file() ? 1 : 0;
            sum.bytes += entry.is_regular_file() ? entry.file_size() : 0;
        }
        return sum;
    }

private:
    std::filesystem::path m_root;
    test::CutRelay m_relay;
    sync::ServerAddress m_address;
    OrdinaryFamily &m_family;
};

void printAssumed(int days)
{
    std::printf(
        "Assumed of a family: two parents' phones and a caregiver's in one home, the therapist's;\n"
        "%d days with three plays, each with a kite before and after, three offers shown, put\n"
        "back, one in four with a piece used up, one in three with something noticed; on Sundays\n"
        "four counts and a request. Each phone exchanges four times a day (7, 12, 17, 20), each\n"
        "time over a line of its own, with TLS.\n\n",
        days);
}

void printPhones(const Costs &costs, const char *title)
{
    std::printf("%-30s %9s %9s %11s %11s\n", title, "visits", "requests", "bytes up", "bytes down");
    for (std::size_t who = 0; who < OrdinaryFamily::phones; ++who) {
        const Cost &cost = costs.at(who);
        const double visits = cost.visits;
        std::printf("  %-28s %9d %9.1f %11.0f %11.0f\n", OrdinaryFamily::names.at(who), cost.visits,
                    static_cast<double>(cost.counts.all()) / visits,
                    static_cast<double>(cost.up) / visits, static_cast<double>(cost.down) / visits);
    }
}

void printRequests(const Cost &all, int days)
{
    std::printf("\nRequests of the family a day, by what is asked\n");
    for (const auto &[method, times] : all.counts.requests)
        std::printf("  %-28s %9.1f\n", method.c_str(), static_cast<double>(times) / days);
    std::printf("  %-28s %9.1f\n", "together", static_cast<double>(all.counts.all()) / days);
    std::printf(
        "  of the bytes, files are: %.0f up, %.0f down a day; the longest listing has %zu\n",
        static_cast<double>(all.counts.fileBytesUp) / days,
        static_cast<double>(all.counts.fileBytesDown) / days, all.counts.longestListing);
}

/// What one family asks of a day.
struct Daily {
    double requests;
    double up;
    double down;
    double bytesKept;
    double filesKept;
    double visits;
};

void printTimes(const Daily &family, const Daily &therapists)
{
    const double n = familiesOfOne;
    std::printf("\nOne therapist with %d such families on one server\n", familiesOfOne);
    std::printf("  %-44s %10.0f\n", "requests a day", n * family.requests);
    std::printf("  %-44s %10.1f up, %.1f down\n", "MB a day", n * family.up / 1e6,
                n * family.down / 1e6);
    std::printf("  %-44s %10.0f, %.1f MB up, %.1f MB down\n", "of these her own phone, requests",
                n * therapists.requests, n * therapists.up / 1e6, n * therapists.down / 1e6);
    std::printf("  %-44s %10.0f MB in %.0f files\n", "storage a year, nothing told again",
                n * family.bytesKept * daysOfAYear / 1e6, n * family.filesKept * daysOfAYear);
}

void printMany(const Daily &family, const MeetingPlace::Lying &lying)
{
    const double n = manyCrews;
    const double perVisit = family.requests / family.visits;
    std::printf("\n%d such crews on one clustered service\n", manyCrews);
    std::printf("  %-44s %10.0f\n", "requests a second, evenly over the day",
                n * family.requests / 86'400);
    std::printf("  %-44s %10.0f\n", "  every phone once between 7 and 8 pm",
                n * OrdinaryFamily::phones * perVisit / 3'600);
    std::printf("  %-44s %10.0f\n", "  every phone once in ten minutes from 7 pm",
                n * OrdinaryFamily::phones * perVisit / 600);
    std::printf("  %-44s %10.0f, %.1f up, %.1f down\n", "GB kept a year; GB a day",
                n * family.bytesKept * daysOfAYear / 1e9, n * family.up / 1e9,
                n * family.down / 1e9);
    std::printf("  %-44s %10.0f million, %.0f new a second\n", "files a year, nothing told again",
                n * family.filesKept * daysOfAYear / 1e6, n * family.filesKept / 86'400);
    std::printf("  %-44s %10.0f (%llu a crew)\n", "folders", n * static_cast<double>(lying.folders),
                static_cast<unsigned long long>(lying.folders));
}

Daily dailyOf(const Cost &cost, const MeetingPlace::Lying &grown, int days)
{
    const double n = days;
    return {static_cast<double>(cost.counts.all()) / n, static_cast<double>(cost.up) / n,
            static_cast<double>(cost.down) / n,         static_cast<double>(grown.bytes) / n,
            static_cast<double>(grown.files) / n,       cost.visits / n};
}

int countDays(int days)
{
    test::DavServer server(test::DavKind::Apache);
    if (!server.start()) {
        std::fprintf(stderr, "no server to count at: %s\n", qPrintable(server.problem()));
        return 1;
    }
    OrdinaryFamily family(2027);
    MeetingPlace place(server, family);
    const auto meet = [&place](std::size_t who) { place.meet(who); };
    if (!family.begin(meet)) {
        std::fprintf(stderr, "the crew could not begin\n");
        return 1;
    }
    const MeetingPlace::Lying atFirst = place.lying();
    place.costs = {};
    for (int day = 0; day < days; ++day)
        family.liveADay(day, meet);
    const Costs lived = place.costs;
    const MeetingPlace::Lying atLast = place.lying();
    for (int round = 0; round < 4; ++round) { // until nobody has anything to say
        place.costs = {};
        for (std::size_t who = 0; who < OrdinaryFamily::phones; ++who)
            meet(who);
    }
    const Cost all = sumOf(lived);
    if (all.troubles > 0 || family.plays() < 3 * days || sumOf(place.costs).troubles > 0) {
        std::fprintf(stderr, "%d visits met trouble, %d plays\n", all.troubles, family.plays());
        return 1;
    }
    const MeetingPlace::Lying grown{atLast.files - atFirst.files, 0, atLast.bytes - atFirst.bytes};
    printAssumed(days);
    printPhones(lived, "A visit on ordinary days");
    printPhones(place.costs, "A visit with nothing new");
    printRequests(all, days);
    printTimes(dailyOf(all, grown, days), dailyOf(lived[OrdinaryFamily::therapist], {}, days));
    printMany(dailyOf(all, grown, days), atLast);
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    setenv("LIDLARK_SOURCE_DIR", LIDLARK_SOURCES, 0);
    return countDays(argc > 1 ? std::max(1, std::atoi(argv[1])) : 30);
}
