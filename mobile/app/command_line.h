#pragma once

#include "graph.h"

#include <QStringList>

#include <optional>

namespace lidlark::mobile {

/// How the app may be started from a terminal: `lidlark --help` lists it.
class CommandLine
{
public:
    /// @param arguments with the program's name first.
    explicit CommandLine(const QStringList &arguments);

    /// Set when there is nothing to start: 0 after --help or --version, 2 after wrong use, with the
    /// reason on standard error.
    [[nodiscard]] std::optional<int> exitStatus() const { return m_exitStatus; }
    [[nodiscard]] const StartOptions &options() const { return m_options; }

private:
    /// @returns what is wrong with the arguments, or nothing.
    QString read(const QStringList &arguments);

    StartOptions m_options;
    std::optional<int> m_exitStatus;
};

} // namespace lidlark::mobile
