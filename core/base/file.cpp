// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/file.h"

#include "core/base/digest.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

namespace proofwalk::base {
namespace {

std::string reason(int error) { return std::generic_category().message(error); }

/// A file descriptor that closes itself.
struct Descriptor {
    int number;
    explicit Descriptor(int opened) : number(opened) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor()
    {
        if (number >= 0) ::close(number);
    }
};

bool writeAll(int descriptor, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

} // namespace

Result<std::string> readFile(const std::filesystem::path& path, std::size_t limit)
{
    // Not to wait for a writer, should the name be a pipe's.
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    if (file.number < 0) {
        if (errno == ENOENT) return failure("file.missing", path.string());
        return failure("file.unreadable", path.string(), {{"detail", reason(errno)}});
    }
    struct stat facts{};
    if (::fstat(file.number, &facts) != 0 || !S_ISREG(facts.st_mode))
        return failure("file.unreadable", path.string(), {{"detail", "not a regular file"}});
    if (static_cast<std::size_t>(facts.st_size) > limit)
        return failure("file.too-large", path.string(),
                       {{"bytes", std::int64_t(facts.st_size)}, {"limit", static_cast<std::int64_t>(limit)}});

    std::string bytes(static_cast<std::size_t>(facts.st_size), '\0');
    std::size_t have = 0;
    while (have < bytes.size()) {
        const ssize_t count = ::read(file.number, bytes.data() + have, bytes.size() - have);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return failure("file.unreadable", path.string(), {{"detail", reason(errno)}});
        if (count == 0) break;
        have += static_cast<std::size_t>(count);
    }
    bytes.resize(have);
    return bytes;
}

Result<void> writeFile(const std::filesystem::path& path, std::string_view bytes, FileAccess access)
{
    const auto bad = [&](int error) { return failure("file.unwritable", path.string(), {{"detail", reason(error)}}); };
    const std::string temporary = path.string() + "." + randomHex(4) + ".part";
    const mode_t mode = access == FileAccess::ownerOnly ? 0600 : 0644;
    {
        const Descriptor file(::open(temporary.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode));
        if (file.number < 0) return bad(errno);
        if (!writeAll(file.number, bytes) || ::fsync(file.number) != 0) {
            const int error = errno;
            ::unlink(temporary.c_str());
            return bad(error);
        }
    }
    if (::rename(temporary.c_str(), path.c_str()) != 0) {
        const int error = errno;
        ::unlink(temporary.c_str());
        return bad(error);
    }
    const auto parent = path.has_parent_path() ? path.parent_path() : std::filesystem::path(".");
    const Descriptor folder(::open(parent.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (folder.number < 0 || ::fsync(folder.number) != 0) return bad(errno);
    return {};
}

} // namespace proofwalk::base
