#include "core/sync/connection_check.h"

#include "core/sync/publish.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

/// Of digits and letters that a storage keeps as they are, and no hash.
const std::string trialFolder = "0.trial";

/// Every byte there is, so that nobody takes it for text.
std::string everyByte()
{
    std::string bytes;
    for (int byte = 0; byte < 256; ++byte)
        bytes += static_cast<char>(byte);
    return bytes;
}

/// One trial, with files of fresh names.
class Trial
{
public:
    Trial(Storage &storage, const std::string &name)
        : m_storage(storage), m_file{trialFolder, name}, m_part{trialFolder, name + ".b.part"},
          m_renamed{trialFolder, name + ".c"}
    {
    }

    Connection run()
    {
        for (const auto step : {&Trial::getIn, &Trial::makeFolder, &Trial::write, &Trial::see,
                                &Trial::rename, &Trial::readBack, &Trial::removeAll}) {
            if (const auto barred = (this->*step)()) {
                (void)removeAll();
                return *barred;
            }
        }
        return Connection::Works;
    }

private:
    using Barred = std::optional<Connection>;

    /// What @p trouble in a step means, if the step alone would mean @p ofStep.
    Connection meaningOf(Trouble trouble, Connection ofStep)
    {
        if (trouble == Trouble::NotTrusted)
            return Connection::NotTrusted;
        if (trouble == Trouble::Full)
            return Connection::Full;
        // A proxy that cannot pass on one kind of request answers as if nobody were there.
        if (trouble == Trouble::Unreachable &&
            troubleIn(m_storage.sizeOf(m_file)) == Trouble::Unreachable)
            return Connection::NoAnswer;
        return ofStep;
    }
    template <class T> Barred barredBy(const Answer<T> &answer, Connection ofStep)
    {
        const auto trouble = troubleIn(answer);
        return trouble ? Barred(meaningOf(*trouble, ofStep)) : std::nullopt;
    }

    Barred getIn()
    {
        const auto size = m_storage.sizeOf(m_file);
        const bool isRefused = troubleIn(size) == Trouble::Refused;
        return barredBy(size, isRefused ? Connection::NotLetIn : Connection::NoStorage);
    }
    Barred makeFolder()
    {
        const auto made = m_storage.makeFolder(trialFolder);
        const bool isRefused = troubleIn(made) == Trouble::Refused;
        return barredBy(made, isRefused ? Connection::NoFolders : Connection::NoStorage);
    }
    Barred write()
    {
        const auto first = m_storage.put(m_file, m_bytes);
        if (const auto barred = barredBy(first, Connection::NoWriting))
            return barred;
        return barredBy(m_storage.put(m_part, m_bytes), Connection::NoWriting);
    }
    Barred see()
    {
        const auto names = m_storage.list(trialFolder);
        if (const auto barred = barredBy(names, Connection::NoListing))
            return barred;
        const auto size = m_storage.sizeOf(m_file);
        if (const auto barred = barredBy(size, Connection::NoListing))
            return barred;
        const auto &seen = std::get<std::vector<std::string>>(names);
        const bool isSeen = std::ranges::find(seen, m_file.name) != seen.end() &&
                            std::get<std::optional<std::uint64_t>>(size) == m_bytes.size();
        return isSeen ? Barred() : Connection::NoListing;
    }
    Barred rename()
    {
        const auto over = m_storage.move(m_part, m_file.name);
        if (const auto barred = barredBy(over, Connection::NoRenaming))
            return barred;
        if (std::get<Storage::Moved>(over) == Storage::Moved::Done)
            return Connection::RenamesOver;
        const auto moved = m_storage.move(m_part, m_renamed.name);
        if (const auto barred = barredBy(moved, Connection::NoRenaming))
            return barred;
        return std::get<Storage::Moved>(moved) == Storage::Moved::Done ? Barred()
                                                                       : Connection::NoRenaming;
    }
    Barred readBack()
    {
        for (const Place &place : {m_file, m_renamed}) {
            const auto read = m_storage.get(place);
            if (const auto barred = barredBy(read, Connection::ChangesBytes))
                return barred;
            if (std::get<std::optional<std::string>>(read) != m_bytes)
                return Connection::ChangesBytes;
        }
        return std::nullopt;
    }
    Barred removeAll()
    {
        for (const Place &place : {m_file, m_part, m_renamed}) {
            const auto removed = m_storage.remove(place);
            if (const auto barred = barredBy(removed, Connection::NoDeleting))
                return barred;
            const auto size = m_storage.sizeOf(place);
            if (const auto barred = barredBy(size, Connection::NoDeleting))
                return barred;
            if (std::get<std::optional<std::uint64_t>>(size))
                return Connection::NoDeleting;
        }
        return std::nullopt;
    }

    Storage &m_storage;
    Place m_file;
    Place m_part;
    Place m_renamed;
    std::string m_bytes = everyByte();
};

} // namespace

Connection checkConnection(Storage &storage, Entropy &entropy)
{
    return Trial(storage, entropy.freshId()).run();
}

} // namespace lidlark::sync
