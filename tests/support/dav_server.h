#pragma once

#include "core/sync/server_address.h"
#include "tests/support/certificates.h"
#include "tests/support/child_process.h"

#include <QTemporaryDir>

#include <filesystem>
#include <optional>

namespace lidlark::test {

/// Which program serves.
enum class DavKind {
    Apache,  ///< mod_dav_fs, over TLS with a certificate of the test's own authority.
    Lighttpd ///< mod_webdav, over plain HTTP.
};

/// How it is to be set up.
struct DavSetup {
    CertificateKind certificate = CertificateKind::Right; ///< Apache's.
    /// The size of the disk it keeps files on: a small one of its own, seen by nobody else. 0 for a
    /// folder of the system's. Lighttpd's; it takes leave to mount (isSmallDiskAllowed).
    int diskKilobytes = 0;
};

/// A real WebDAV server on this machine, for as long as this lives: on free ports of 127.0.0.1,
/// with its settings, logs and files in a temporary folder, and a password. Started by root it runs
/// as www-data, else as whoever runs the test.
class DavServer
{
public:
    explicit DavServer(DavKind kind, DavSetup setup = {});
    DavServer(const DavServer &) = delete;
    DavServer &operator=(const DavServer &) = delete;

    /// Returns when it answers; from the thread that outlives it. After stop() or kill(): on the
    /// same ports, with the same files.
    /// @returns false where it does not start; problem() says why.
    bool start();
    /// As its owner would; it may finish what is under way.
    void stop() { m_process.stop(); }
    /// As when the current fails. From any thread.
    void kill() { m_process.end(); }

    /// The folder it serves, with what opens it.
    [[nodiscard]] sync::ServerAddress address() const;
    /// The same without TLS, for a proxy in between: its port, and the path.
    [[nodiscard]] int plainPort() const { return m_plainPort; }
    /// The port of `address`.
    [[nodiscard]] int port() const { return m_kind == DavKind::Apache ? m_port : m_plainPort; }
    /// The folder on disk.
    [[nodiscard]] std::filesystem::path root() const;
    [[nodiscard]] QString problem() const;

    /// Whether a disk of its own can be had here.
    static bool isSmallDiskAllowed();

private:
    void writeSettings() const;
    [[nodiscard]] std::vector<std::string> command() const;
    bool startOnPorts();
    [[nodiscard]] QString path(const QString &name) const { return m_folder.filePath(name); }

    DavKind m_kind;
    DavSetup m_setup;
    QTemporaryDir m_folder;
    std::optional<Authority> m_authority; ///< Apache's.
    int m_port = 0;
    int m_plainPort = 0;
    ChildProcess m_process; ///< Last: it dies before its folder goes.
};

} // namespace lidlark::test
