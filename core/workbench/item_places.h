#pragma once

#include "core/workbench/supply.h"

#include <optional>
#include <span>
#include <string>
#include <unordered_map>

namespace lidlark::workbench {

/// Where each item stands among the supplies; of two alike, the first.
class ItemPlaces
{
public:
    explicit ItemPlaces(std::span<const Supply> supplies)
    {
        for (std::size_t i = 0; i < supplies.size(); ++i)
            m_places.emplace(supplies[i].item.value, i);
    }

    [[nodiscard]] std::optional<std::size_t> of(const ItemId &item) const
    {
        const auto found = m_places.find(item.value);
        return found == m_places.end() ? std::nullopt : std::optional(found->second);
    }

private:
    std::unordered_map<std::string, std::size_t> m_places;
};

} // namespace lidlark::workbench
