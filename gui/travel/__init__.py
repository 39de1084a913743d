"""Travel: books packed, exported and unpacked; another grower's book brought into this one."""
