#pragma once

#include <QDir>
#include <QString>

namespace lidlark::test {

/// For whom a certificate is, and until when.
enum class CertificateKind {
    Right,    ///< For localhost and 127.0.0.1, today.
    Expired,  ///< For them, until yesterday.
    OtherHost ///< For another machine.
};

/// The files a TLS server needs.
struct Certificate {
    QString certificate; ///< PEM
    QString key;         ///< PEM
};

/// Signs certificates of the test's own, by openssl. Nobody trusts it but who is given its file.
class Authority
{
public:
    /// @param folder that is there, where all its files go.
    explicit Authority(const QDir &folder);

    [[nodiscard]] QString file() const { return m_folder.filePath("authority.pem"); }
    [[nodiscard]] Certificate sign(CertificateKind kind) const;

private:
    QDir m_folder;
};

/// A line for a file of passwords, as Apache reads it: `user:hash`.
QString passwordLine(const QString &user, const QString &password);

} // namespace lidlark::test
