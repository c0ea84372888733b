#pragma once

#include "core/rotation/instance.h"
#include "core/rotation/plan_rules.h"

#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>

namespace lidlark::bench {

inline std::optional<rotation::Instance> readFile(const std::filesystem::path &path)
{
    std::ifstream file(path);
    std::ostringstream text;
    text << file.rdbuf();
    auto instance = rotation::readInstance(text.str());
    return instance ? std::optional(*std::move(instance)) : std::nullopt;
}

/// The rules of all its days.
inline rotation::PlanRules rulesOfAll(const rotation::Instance &instance)
{
    rotation::PlanRules rules;
    for (std::size_t day = 0; day < instance.minutes.size(); ++day)
        rules.days.push_back(rulesOf(instance, day));
    return rules;
}

} // namespace lidlark::bench
