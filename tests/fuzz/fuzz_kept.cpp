#include "tests/fuzz/target.h"

#include "core/base/utf8.h"
#include "core/store/box_repository.h"
#include "core/store/question_text.h"
#include "core/sync/consent.h"
#include "core/sync/found_crew.h"
#include "core/sync/invite.h"
#include "core/sync/kept_place.h"
#include "core/sync/knock.h"
#include "core/sync/own_secret.h"
#include "core/sync/secret_file.h"
#include "core/usecase/progress.h"
#include "core/usecase/remind.h"
#include "core/usecase/set_up_home.h"
#include "tests/support/memory_keeper.h"

#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace lidlark::fuzz {

namespace {

constexpr auto person = "Nan";

crypto::DeviceSecret secret()
{
    std::array<std::uint8_t, crypto::DeviceSecret::size> bytes{};
    bytes.fill(0x44);
    return crypto::DeviceSecret(bytes);
}

/// A phone on which all that is kept beside the events has been kept once.
class Phone
{
public:
    Phone() : m_database(*store::Database::open(":memory:"))
    {
        usecase::FirstAnswers answers;
        answers.childAlias = "Fin";
        answers.adultAlias = person;
        auto workplace = asWorkplace();
        const auto device = usecase::setUpHome(workplace, answers);
        must(device.ok(), "a phone can be set up");
        m_device = *device;
        m_box = store::BoxRepository(m_database).boxes()->front().id;
        keepAll();
    }

    /// Whatever is kept, it is @p bytes now.
    void garble(std::string_view bytes)
    {
        auto update = m_database.prepare("UPDATE local_state SET value = ?1");
        must(update && update->bind(1, bytes).run().ok(), "a store can be written");
    }

    [[nodiscard]] store::Database &database() { return m_database; }
    [[nodiscard]] const store::Device &device() const { return m_device; }
    [[nodiscard]] const StillClock &clock() const { return m_clock; }
    [[nodiscard]] const BoxId &box() const { return m_box; }
    [[nodiscard]] usecase::Workplace asWorkplace()
    {
        return {m_database, m_catalogue, m_clock, m_entropy, m_device};
    }
    [[nodiscard]] sync::Post asPost()
    {
        return {m_database, m_clock, m_entropy, m_device, secret()};
    }

private:
    void keepAll()
    {
        test::MemoryKeeper keeper;
        auto workplace = asWorkplace();
        auto post = asPost();
        const sync::Asked asked{crew::Role::Caregiver, m_device.home};
        must(sync::foundCrew(post, m_box.value).ok() &&
                 sync::invite(post, m_box.value, asked).ok() &&
                 sync::consentToSharing(m_database, {person, *dayFromText("2027-01-15")}).ok() &&
                 sync::keepPlace(m_database, keeper, {"https://dav.example/", person, "x"}).ok() &&
                 sync::moveMarkOn(m_database, m_device.id, keeper).ok() &&
                 usecase::keepReminder(m_database, {}, {}).ok() &&
                 usecase::keepProgress(workplace, m_box, {}).ok(),
             "all can be kept once");
    }

    store::Database m_database;
    catalogue::Catalogue m_catalogue;
    StillClock m_clock{1'800'000'000'000};
    SeededEntropy m_entropy{"kept"};
    store::Device m_device;
    BoxId m_box;
};

/// A phone that has typed a code and waits.
struct Newcomer {
    store::Database database = *store::Database::open(":memory:");
    StillClock clock{1'800'000'000'000};
    SeededEntropy entropy{"newcomer"};

    Newcomer()
    {
        test::MemoryKeeper keeper;
        const sync::JoinSecret code(std::array<std::uint8_t, sync::JoinSecret::size>{7});
        must(sync::beginJoining(database, clock, entropy, keeper, code, person).ok(),
             "a phone can begin to join");
    }

    void goOnWith(std::string_view bytes)
    {
        auto update = database.prepare("UPDATE local_state SET value = ?1");
        must(update && update->bind(1, bytes).run().ok(), "a store can be written");
        const auto begun = sync::joiningIn(database);
        if (!begun || !*begun)
            return;
        test::MemoryKeeper keeper;
        const auto again =
            sync::beginJoining(database, clock, entropy, keeper, (*begun)->secret, person);
        must(again && again->device.id == (*begun)->device.id, "who has begun goes on");
    }
};

/// A keychain whose every word is the same.
class Parrot final : public sync::SecretKeeper
{
public:
    explicit Parrot(std::string_view word) : m_word(word) {}
    Result<std::optional<std::string>> read(const std::string & /*name*/) override
    {
        return std::optional(m_word);
    }
    Outcome keep(const std::string & /*name*/, const std::string & /*value*/) override
    {
        return Done{};
    }
    Outcome forget(const std::string & /*name*/) override { return Done{}; }

private:
    std::string m_word;
};

void readCrew(Phone &phone, std::string_view bytes)
{
    Parrot keeper(bytes);
    auto post = phone.asPost();
    const auto invited = sync::invited(post, phone.box().value);
    must(invited.ok() && (!*invited || (*invited)->untilMs > phone.clock().nowMs()),
         "a code that is over lets nobody in");
    const auto place = sync::placeIn(phone.database(), keeper);
    must(place && (!*place || (*place)->address == bytes), "a place is what was kept");
    (void)sync::ownSecret(phone.database(), phone.device().id, keeper, post.entropy);
    const auto consent = sync::consentIn(phone.database());
    if (!consent || !*consent || (*consent)->person.empty())
        return;
    must(sync::consentToSharing(phone.database(), **consent).ok() &&
             *sync::consentIn(phone.database()) == **consent,
         "a yes is read as it was written");
    must(sync::withdrawConsent(phone.database(), *dayFromText("2027-01-16")).ok() &&
             !*sync::consentIn(phone.database()),
         "a yes that was taken back is none");
}

void readFamily(Phone &phone)
{
    const auto reminder = usecase::reminderOf(phone.database());
    if (reminder && usecase::keepReminder(phone.database(), *reminder, {}))
        must(*usecase::reminderOf(phone.database()) == *reminder,
             "a reminder is read as it was written");
    auto workplace = phone.asWorkplace();
    must(usecase::loadProgress(workplace, phone.box(), {"c-none"}).ok(),
         "what was in hand stops nobody");
    for (const char *which : {"own", "received"})
        (void)store::DeviceRepository(phone.database()).lastInstant(which);
}

void readQuestion(std::string_view bytes)
{
    const auto question = store::questionFrom(std::string(bytes));
    if (question)
        must(store::questionFrom(store::textOf(*question)) == question,
             "a question is read as it was written");
}

void readSecretFile(std::string_view bytes)
{
    const auto path = std::filesystem::temp_directory_path() /
                      ("lidlark-fuzz-" + std::to_string(getpid()) + ".keys");
    std::ofstream(path, std::ios::binary) << bytes;
    sync::SecretFile file(path);
    const auto before = file.read("device");
    if (before && isPlainUtf8(bytes)) {
        must(file.keep("more", std::string(bytes)).ok() &&
                 *file.read("more") == std::string(bytes) && *file.read("device") == *before,
             "a secret is read as it was written");
    } else if (!before) {
        must(!file.keep("more", "x").ok(), "what cannot be read is not written over");
    }
    std::filesystem::remove(path);
}

} // namespace

void kept(std::string_view bytes)
{
    static Phone phone;
    static Newcomer newcomer;
    phone.garble(bytes);
    readCrew(phone, bytes);
    phone.garble(bytes);
    readFamily(phone);
    newcomer.goOnWith(bytes);
    readQuestion(bytes);
    readSecretFile(bytes);
}

} // namespace lidlark::fuzz
