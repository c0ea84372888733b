#include "mobile/bridge/crew_keeper.h"

#include "core/store/device_repository.h"
#include "core/sync/secret_file.h"
#include "mobile/bridge/text.h"
#include "mobile/platform/keychain.h"

namespace lidlark::mobile {

namespace {

constexpr auto whereKey = "crew.keys";
constexpr auto inFile = "file";
constexpr auto inKeychain = "keychain";

/// The system's keychain, in the words of the core.
class KeychainKeeper final : public sync::SecretKeeper
{
public:
    explicit KeychainKeeper(std::shared_ptr<Keychain> keychain) : m_keychain(std::move(keychain)) {}

    Result<std::optional<std::string>> read(const std::string &name) override
    {
        const Keychain::Answer answer = m_keychain->read(fromCore(name));
        if (!answer.came)
            return Error{ErrorCode::Unreadable, "keychain"};
        return answer.value ? std::optional(answer.value->toStdString()) : std::nullopt;
    }
    Outcome keep(const std::string &name, const std::string &value) override
    {
        return done(m_keychain->keep(fromCore(name), QByteArray::fromStdString(value)));
    }
    Outcome forget(const std::string &name) override
    {
        return done(m_keychain->forget(fromCore(name)));
    }

private:
    static Outcome done(bool well)
    {
        return well ? Outcome(Done{}) : Outcome(Error{ErrorCode::Unwritable, "keychain"});
    }

    std::shared_ptr<Keychain> m_keychain;
};

/// Reading alone may work where nothing can be kept.
bool keepsAndGives(Keychain &keychain)
{
    const auto probe = QStringLiteral("probe");
    if (!keychain.keep(probe, QByteArrayLiteral("1")))
        return false;
    const Keychain::Answer answer = keychain.read(probe);
    return keychain.forget(probe) && answer.value == QByteArrayLiteral("1");
}

} // namespace

Result<std::unique_ptr<sync::SecretKeeper>> keeperFor(store::Database &database,
                                                      std::shared_ptr<Keychain> keychain)
{
    store::DeviceRepository local(database);
    const auto kept = local.localState(whereKey);
    if (!kept)
        return kept.error();
    std::string where = kept->value_or("");
    if (where.empty()) {
        where = keychain && keepsAndGives(*keychain) ? inKeychain : inFile;
        if (const Outcome done = local.setLocalState(whereKey, where); !done)
            return done.error();
    }
    if (where == inFile)
        return std::unique_ptr<sync::SecretKeeper>(
            std::make_unique<sync::SecretFile>(database.path() + ".keys"));
    // What lies in a keychain that is locked or gone is not made anew elsewhere.
    if (!keychain)
        return Error{ErrorCode::Unreadable, "keychain"};
    return std::unique_ptr<sync::SecretKeeper>(
        std::make_unique<KeychainKeeper>(std::move(keychain)));
}

bool keysLieInAFile(store::Database &database)
{
    const auto where = store::DeviceRepository(database).localState(whereKey);
    return where && *where == inFile;
}

} // namespace lidlark::mobile
