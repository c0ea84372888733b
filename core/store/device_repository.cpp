#include "core/store/device_repository.h"

#include "core/store/rows.h"

#include <charconv>

namespace lidlark::store {

Result<std::optional<Device>> DeviceRepository::device()
{
    Result<Statement> query =
        m_database.prepare("SELECT id, person, role, home, until FROM device");
    if (!query)
        return query.error();
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    if (!*row)
        return std::optional<Device>();
    Device device{{query->text(0)},
                  query->text(1),
                  roleNames.parse(query->text(2)).value_or(Role::Guest),
                  {query->text(3)},
                  {}};
    if (!query->isNull(4))
        device.until = Day{static_cast<std::int32_t>(query->number(4))};
    return std::optional(std::move(device));
}

Outcome DeviceRepository::setDevice(const Device &device)
{
    Result<Statement> query =
        m_database.prepare("INSERT OR REPLACE INTO device (only_row, id, "
                           "person, role, home, until) VALUES (1, ?1, ?2, ?3, ?4, "
                           "?5)");
    if (!query)
        return query.error();
    return query->bind(1, device.id.value)
        .bind(2, device.person)
        .bind(3, roleNames.of(device.role))
        .bind(4, device.home.value)
        .bind(5, device.until ? std::optional<std::int64_t>(device.until->number) : std::nullopt)
        .run();
}

Result<std::optional<std::string>> DeviceRepository::localState(const std::string &key)
{
    Result<Statement> query = m_database.prepare("SELECT value FROM local_state WHERE key = ?1");
    if (!query)
        return query.error();
    query->bind(1, key);
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    return *row ? std::optional(query->text(0)) : std::optional<std::string>();
}

Result<std::int64_t> DeviceRepository::localNumber(const std::string &key)
{
    const Result<std::optional<std::string>> text = localState(key);
    if (!text)
        return text.error();
    std::int64_t number = 0;
    if (*text)
        std::from_chars((*text)->data(), (*text)->data() + (*text)->size(), number);
    return number;
}

Outcome DeviceRepository::setLocalState(const std::string &key, const std::string &value)
{
    Result<Statement> query =
        m_database.prepare("INSERT OR REPLACE INTO local_state (key, value) VALUES (?1, ?2)");
    if (!query)
        return query.error();
    return query->bind(1, key).bind(2, value).run();
}

Outcome DeviceRepository::clearLocalState(const std::string &key)
{
    Result<Statement> query = m_database.prepare("DELETE FROM local_state WHERE key = ?1");
    if (!query)
        return query.error();
    return query->bind(1, key).run();
}

Result<std::vector<std::pair<std::string, std::string>>> DeviceRepository::phoneState()
{
    Result<Statement> query =
        m_database.prepare("SELECT key, value FROM local_state "
                           "WHERE key LIKE 'phone.%' OR key = 'appearance' ORDER BY key");
    if (!query)
        return query.error();
    return collectRows<std::pair<std::string, std::string>>(
        *query, [](const Statement &row) { return std::pair(row.text(0), row.text(1)); });
}

Result<Instant> DeviceRepository::lastInstant(const std::string &which)
{
    const Result<std::optional<std::string>> text = localState("instant." + which);
    if (!text)
        return text.error();
    Instant instant;
    if (*text) {
        const char *end = (*text)->data() + (*text)->size();
        const auto ms = std::from_chars((*text)->data(), end, instant.ms);
        if (ms.ptr != end)
            std::from_chars(ms.ptr + 1, end, instant.logical);
    }
    return instant;
}

Outcome DeviceRepository::setLastInstant(const std::string &which, Instant instant)
{
    return setLocalState("instant." + which,
                         std::to_string(instant.ms) + ":" + std::to_string(instant.logical));
}

} // namespace lidlark::store
