#include "core/sync/patient_storage.h"

namespace lidlark::sync {

Answer<bool> PatientStorage::makeFolder(const std::string &folder)
{
    return m_patience.ask([&] { return m_storage.makeFolder(folder); });
}

Answer<std::vector<std::string>> PatientStorage::list(const std::string &folder)
{
    return m_patience.ask([&] { return m_storage.list(folder); });
}

Answer<std::optional<std::uint64_t>> PatientStorage::sizeOf(const Place &place)
{
    return m_patience.ask([&] { return m_storage.sizeOf(place); });
}

Answer<std::optional<std::string>> PatientStorage::get(const Place &place)
{
    return m_patience.ask([&] { return m_storage.get(place); });
}

Answer<bool> PatientStorage::put(const Place &place, std::string_view bytes)
{
    return m_patience.ask([&] { return m_storage.put(place, bytes); });
}

Answer<Storage::Moved> PatientStorage::move(const Place &from, const std::string &name)
{
    return m_patience.askUnlessDone([&] { return m_storage.move(from, name); });
}

Answer<bool> PatientStorage::remove(const Place &place)
{
    return m_patience.ask([&] { return m_storage.remove(place); });
}

} // namespace lidlark::sync
